#pragma once
#include "app/viewmodels/page_view_model.h"

namespace app {

/// The front view of the kitchen for a page, with the place in hand marked.
[[nodiscard]] QVariantMap drawingOf(const model::Case &record, const model::Id &here);
/// Places in the order of the walk, as rows; the amount is how many things stand there.
[[nodiscard]] std::vector<ListRow> placeRows(const model::Case &record);

/// Units and their shelves, walked clockwise from the door.
class KitchenPage : public PageViewModel {
public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override;
    void activated(const QString &row) override;
    void command(const QString &name) override;
    [[nodiscard]] QStringList commands() const override { return {QStringLiteral("correct")}; }
    void moved(const QString &row) override { m_row = row; }

private:
    [[nodiscard]] const model::Unit *unitInHand() const;
    [[nodiscard]] const model::Place *placeInHand() const;
    [[nodiscard]] std::vector<FieldSpec> newUnitFields();
    [[nodiscard]] std::vector<FieldSpec> unitFields(const model::Id &id);
    [[nodiscard]] std::vector<FieldSpec> placeFields(const model::Id &id);
    void addUnit();
    void addPlace();
    void remove();

    struct NewUnit {
        QString name, width, shelves;
        model::UnitKind kind = model::UnitKind::WallCupboard;
        model::WorkArea area = model::WorkArea::None;
    };
    NewUnit m_new;
    model::Id m_hand; // unit or place that is being changed; empty: a new unit
    QString m_row;
};

/// What stands on each place, one line a shelf.
class ContentsPage : public PageViewModel {
public:
    ContentsPage(Session &session, ShellViewModel &shell, model::Id &place)
        : PageViewModel(session, shell), m_place(place) {}
    void refresh() override;
    void edit(const QString &key, const QString &value) override;
    void act(const QString &key) override;
    void activated(const QString &row) override;
    void moved(const QString &row) override { m_row = row; }
    void command(const QString &name) override;
    [[nodiscard]] QStringList commands() const override;

private:
    [[nodiscard]] int placeIndex() const;
    [[nodiscard]] std::vector<FieldSpec> thingFields(const model::Id &id);
    void takeLine(const QString &line);
    void settle();
    void step(int by);
    void nextDoubt(int by);
    void refreshFindings();

    model::Id &m_place; // kept while other pages are shown
    model::Id m_thing;  // the thing that is being corrected; empty: the line
    QString m_row;
};

} // namespace app
