#pragma once
#include "app/viewmodels/page_view_model.h"
#include "model/touch_test_result.h"

namespace app {

/// The marker test: chosen and laid out, run trial by trial, and what came of it.
///
/// While it runs, only numbers of slots are shown and spoken: a name, an answer or a result that the client
/// hears would spoil it.
class MarkerTestPage : public PageViewModel {
    Q_OBJECT

public:
    using PageViewModel::PageViewModel;
    void refresh() override;
    void act(const QString &key) override;

private:
    enum class Stage { None, Choosing, Running, Ended, RecheckLaidOut, Recheck };
    enum class Recheck { No, LaidOut, Running };
    [[nodiscard]] const model::TouchTestRecord *test() const;
    [[nodiscard]] Stage stage() const;

    [[nodiscard]] std::vector<FieldSpec> choosingFields();
    [[nodiscard]] FieldSpec markField(const model::Marker &marker);
    [[nodiscard]] FieldSpec blankField();
    [[nodiscard]] std::vector<FieldSpec> handFields();
    /// What the page is made of at one stage.
    struct Shown {
        QString kicker{}, trial{}, rowsLabel{};
        std::vector<FieldSpec> fields{};
        std::vector<ActionRow> actions{};
        std::vector<FindingRow> findings{};
        std::vector<ListRow> rows{};
    };
    [[nodiscard]] Shown choosing();
    [[nodiscard]] Shown running() const;
    [[nodiscard]] Shown result() const;
    [[nodiscard]] Shown recheck() const;
    [[nodiscard]] std::vector<ActionRow> answerActions() const;

    void begin();
    void startNew();
    void answer(model::TouchAnswer answer);
    void takeBack();
    void stop();
    void sayTrial(const QString &before = {});
    [[nodiscard]] QString slotWords() const;
    [[nodiscard]] bool isRecheck() const { return m_recheck == Recheck::Running; }

    model::MarkerTestState m_state;
    bool m_begun = false; // of a test without trials: its slots are laid out
    Recheck m_recheck = Recheck::No;
};

} // namespace app
