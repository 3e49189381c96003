#pragma once
#include "app/viewmodels/page_view_model.h"

namespace app {

/// "-2: ...", the five levels of a goal as choices; empty levels are named by their rank.
[[nodiscard]] QStringList levelChoices(const model::Goal &goal);

/// Goals with five levels written before treatment.
class GoalsPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override;
    void activated(const QString &row) override;
    void moved(const QString &row) override { m_row = row; }
    void command(const QString &name) override;
    [[nodiscard]] QStringList commands() const override { return {QStringLiteral("correct")}; }

private:
    [[nodiscard]] QString subject() const override { return text(m_goal.text); }
    [[nodiscard]] bool isGap(const FormField &field) const override;
    [[nodiscard]] std::vector<FieldSpec> goalFields(const model::Id &id);

    model::Id m_goal;
    QString m_row;
};

/// The second visit and later ones: what was open, levels of the goals with evidence, what the plan needs.
class FollowUpPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override;

private:
    [[nodiscard]] std::vector<FieldSpec> ratingFields(const model::Goal &goal);
};

/// Levels of every goal over the visits, with their sentences.
class ProgressPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override { m_shell.goTo(key); }
};

} // namespace app
