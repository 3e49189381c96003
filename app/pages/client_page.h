#pragma once
#include "app/viewmodels/page_view_model.h"

namespace app {

/// Who the client is: person, referral, papers, household, diet.
class ClientPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void edit(const QString &key, const QString &value) override;
    void act(const QString &key) override;

protected:
    [[nodiscard]] bool isGap(const FormField &field) const override;

private:
    [[nodiscard]] std::vector<FieldSpec> personFields();
    [[nodiscard]] std::vector<FieldSpec> paperFields();
    [[nodiscard]] std::vector<FieldSpec> householdFields();
    [[nodiscard]] std::vector<FieldSpec> dietFields();
    [[nodiscard]] std::vector<FieldSpec> sharingFields();
    void shareKitchen(const QString &chosen);
    [[nodiscard]] FieldSpec visitField();
};

/// The questions whose answers change the plan, with what follows.
class SafetyPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override;
};

/// Sight, touch or reach as measured, with what it means beside it.
class MeasurementPage : public PageViewModel {
    Q_OBJECT

public:
    MeasurementPage(Session &session, ShellViewModel &shell, model::Domain domain)
        : PageViewModel(session, shell), m_domain(domain) {}
    void refresh() override;
    void edit(const QString &key, const QString &value) override;
    void act(const QString &key) override;

protected:
    [[nodiscard]] bool isGap(const FormField &field) const override;

private:
    [[nodiscard]] FieldSpec resultField(const model::TestInfo &info, model::Side side);
    [[nodiscard]] FieldSpec methodField();
    [[nodiscard]] FieldSpec glassesField();
    [[nodiscard]] FieldSpec chartField(model::Test test);
    [[nodiscard]] FieldSpec fingerField();
    [[nodiscard]] std::string chartToday(model::Test test) const;
    [[nodiscard]] std::string finger() const;
    [[nodiscard]] bool isShown(const model::Measurement &result) const;
    void showShelves();
    [[nodiscard]] const model::Measurement *latest(model::Test test, model::Side side) const;
    [[nodiscard]] model::Result<void> write(model::Case &record, const model::TestInfo &info,
                                            model::Side side, const QString &typed) const;

    model::Domain m_domain;
    bool m_withGlasses = true;
    std::optional<std::string> m_finger; // of the results shown; none: not chosen yet
};

} // namespace app
