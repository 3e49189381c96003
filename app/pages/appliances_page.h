#pragma once
#include "app/viewmodels/page_view_model.h"

namespace app {

/// Appliances with their controls in one line each, and which settings get which mark.
class AppliancesPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void edit(const QString &key, const QString &value) override;
    void act(const QString &key) override;
    void moved(const QString &row) override { m_row = row; }
    void activated(const QString &row) override;
    void command(const QString &name) override;
    [[nodiscard]] QStringList commands() const override {
        return {QStringLiteral("correct"), QStringLiteral("readBack")};
    }

    [[nodiscard]] QString fieldAboveList() const override { return QStringLiteral("appliance"); }

private:
    [[nodiscard]] QString subject() const override { return text(m_hand.text); }
    [[nodiscard]] const model::Appliance *inHand() const;
    [[nodiscard]] std::vector<FieldSpec> handFields(const model::Id &id);
    [[nodiscard]] std::vector<FindingRow> findingRows() const;
    [[nodiscard]] std::vector<ListRow> applianceRows() const;
    void take(const QString &line);
    void remove();

    model::Id m_hand; // the appliance that is being changed; empty: a new one
    QString m_row;
};

} // namespace app
