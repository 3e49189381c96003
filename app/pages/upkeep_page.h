#pragma once
#include "app/viewmodels/page_view_model.h"
#include "model/keep_by.h"
#include "model/upkeep.h"

namespace app {

/// What keeps the plan alive: what is due and when, the dates of each food, the days that the client chose,
/// and what has to be bought.
class UpkeepPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override;
    void moved(const QString &row) override;
    void activated(const QString &row) override;
    void command(const QString &name) override;
    [[nodiscard]] QStringList commands() const override { return {QStringLiteral("correct")}; }

private:
    [[nodiscard]] QString subject() const override { return m_settings ? QString() : m_row; }
    [[nodiscard]] const model::Thing *thingInHand() const;
    [[nodiscard]] std::vector<FieldSpec> dateFields(const model::Thing &thing);
    [[nodiscard]] FieldSpec dayField(const char *key, const QString &label,
                                     std::optional<model::Date> model::Thing::*member);
    [[nodiscard]] std::vector<FieldSpec> settingFields();
    [[nodiscard]] FieldSpec weekdayField(const char *key, const QString &label, const QString &otherwise,
                                         std::optional<int> model::UpkeepWishes::*member);
    [[nodiscard]] FieldSpec priceField(const char *key, const QString &label,
                                       double model::UpkeepWishes::*member);
    [[nodiscard]] FieldSpec roundDayField();
    [[nodiscard]] FieldSpec currencyField();
    [[nodiscard]] FieldSpec regionField();
    void showForm();
    void showFindings();
    void showRows();
    void done(std::optional<model::Date> model::UpkeepWishes::*member, const QString &words);
    void changePack(const QString &words, void (*change)(model::Thing &, model::Date));

    QString m_row;
    bool m_settings = false; // the days and prices are shown instead of one thing's dates
};

} // namespace app
