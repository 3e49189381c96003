#pragma once
#include "app/viewmodels/page_view_model.h"
#include "model/better_plan.h"
#include "model/place_choice.h"
#include "model/plan_wishes.h"
#include "reports/labels.h"
#include <atomic>
#include <memory>

namespace app {

/// What stands where and how it is marked, with why, runner-up, price, and the therapist's own decisions.
class PlanPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    ~PlanPage() override {
        *m_stop = true;
        stopLooking();
    }
    void refresh() override;
    void edit(const QString &key, const QString &value) override;
    void act(const QString &key) override;
    void moved(const QString &row) override;
    void activated(const QString &row) override;
    void command(const QString &name) override;
    [[nodiscard]] QStringList commands() const override;
    void stopWork() override { *m_stop = true; }

private:
    [[nodiscard]] QString subject() const override { return m_weights ? QString() : m_row; }
    /// The kitchen with its plan and what it goes by: of both clients where they share it.
    [[nodiscard]] const model::Case &planned() const { return m_session.planRecord(); }
    [[nodiscard]] std::vector<FindingRow> sharingRows() const;
    [[nodiscard]] const model::PlanLine *lineInHand() const;
    [[nodiscard]] QString nameOf(const model::Id &thing) const;
    [[nodiscard]] std::vector<ListRow> lineRows() const;
    [[nodiscard]] QString markWords(const model::PlanLine &line) const;
    [[nodiscard]] QString markWords(const model::PlanLine &line, const model::Thing *thing) const;
    [[nodiscard]] FindingRow markRow(const model::PlanLine &line) const;
    [[nodiscard]] const reports::Label *labelOf(const model::Id &thing) const;
    void refreshWhy();
    void refreshActions();
    void work();
    void take(const model::Result<model::Plan> &made);
    void decide(const model::Overrule &wish, const QString &words);
    void overrule(const model::Id &place);
    void chooseMark(const QString &name);
    void choosePlace(const QString &name);
    [[nodiscard]] std::vector<model::PlaceChoice> placesOf(const model::PlanLine &line) const;
    [[nodiscard]] QString choiceName(const model::PlaceChoice &choice, const model::PlanLine &line) const;
    void keepHere(bool forbid);
    void forgetOverrule();
    void sayWhy();
    [[nodiscard]] QString noReasonWords() const;
    [[nodiscard]] std::vector<FieldSpec> lineFields(const model::PlanLine &line);
    [[nodiscard]] model::Result<void> setWording(model::Case &record, const model::Id &thing,
                                                 const QString &typed) const;
    [[nodiscard]] std::vector<FieldSpec> weightFields();
    [[nodiscard]] QString figuresInWords() const;
    [[nodiscard]] std::vector<FindingRow> decisionRows();
    [[nodiscard]] std::vector<FindingRow> comparisonRows() const;
    [[nodiscard]] std::vector<ActionRow> weightActions() const;
    void compare();
    void usualWeights();
    void showWeights(bool show);
    void refreshKicker();
    void lookForBetter();
    void stopLooking();
    void showLooking(double share);
    void offer(const model::BetterPlan &found);
    void takeBetter();
    void dropStaleOffer();
    [[nodiscard]] QString offerWords() const;
    [[nodiscard]] QString changedWords() const;
    [[nodiscard]] std::vector<ActionRow> offerActions() const;

    QString m_row;
    model::Id m_whyThing; // whose reasons m_why holds
    std::optional<model::LineWhy> m_why;
    std::shared_ptr<std::atomic<bool>> m_stop = std::make_shared<std::atomic<bool>>(false);
    bool m_working = false;
    bool m_revised = false; // the plan that is being worked out keeps what it can
    bool m_weights = false; // the weights are shown instead of one line's decisions
    std::optional<model::SideBySide> m_compared;
    std::shared_ptr<std::atomic<bool>> m_look; // set while a better plan is looked for; true stops it
    int m_lookedAt = 0;                        // percent
    std::optional<model::BetterPlan> m_offer;
    model::Case m_offerFor;        // the record that is looked at
    model::PlanBasis m_plannedFor; // what the plan that is being worked out rests on
};

} // namespace app
