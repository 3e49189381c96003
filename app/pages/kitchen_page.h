#pragma once
#include "app/viewmodels/page_view_model.h"
#include "reports/document.h"

namespace app {

/// The front view of the kitchen for a page, with the place in hand marked.
[[nodiscard]] QVariantMap drawingOf(const model::Case &record, const model::Id &here);
/// Any drawing of the kitchen for a page.
[[nodiscard]] QVariantMap drawingOf(const reports::Figure &figure, const QString &label, bool floorShown,
                                    const model::Case &record, const model::Id &here);
/// Places in the order of the walk, as rows; the amount is how many things stand there.
[[nodiscard]] std::vector<ListRow> placeRows(const model::Case &record);

/// Units and their shelves, walked clockwise from the door.
class KitchenPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override;
    void activated(const QString &row) override;
    void command(const QString &name) override;
    void edit(const QString &key, const QString &value) override;
    [[nodiscard]] QStringList commands() const override {
        return {QStringLiteral("correct"), QStringLiteral("readBack")};
    }
    void moved(const QString &row) override { m_row = row; }

    [[nodiscard]] QString fieldAboveList() const override { return QStringLiteral("units"); }

private:
    [[nodiscard]] QString subject() const override { return text(m_hand.text); }
    [[nodiscard]] const model::Unit *unitInHand() const;
    [[nodiscard]] const model::Place *placeInHand() const;
    [[nodiscard]] std::vector<FieldSpec> newUnitFields();
    [[nodiscard]] std::vector<FieldSpec> unitFields(const model::Id &id);
    [[nodiscard]] std::vector<FieldSpec> placeFields(const model::Id &id);
    void showDrawing();
    void takeUnits(const QString &line);
    [[nodiscard]] QString leavesRoom(std::size_t at);
    void copyInHand();
    void splitInHand();
    void moveInHand(int by);
    void putBefore();
    void addUnit();
    void addPlace();
    void remove();

    struct NewUnit {
        QString name, width, shelves;
        model::UnitKind kind = model::UnitKind::WallCupboard;
        model::WorkArea area = model::WorkArea::None;
    };
    NewUnit m_new;
    model::Id m_hand;   // unit or place that is being changed; empty: a new unit
    model::Id m_before; // the next new unit goes before it; empty: at the end
    QString m_row;
    bool m_above = false; // the drawing is the one from above
};

} // namespace app
