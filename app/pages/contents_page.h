#pragma once
#include "app/viewmodels/page_view_model.h"
#include "model/contents_change.h"

namespace app {

/// What stands on each place, one line a shelf; the doubts that a line leaves; a list taken in at once.
class ContentsPage : public PageViewModel {
    Q_OBJECT

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
    [[nodiscard]] QString fieldAboveList() const override { return QStringLiteral("line"); }

private:
    [[nodiscard]] QString subject() const override;
    /// What the page is for at the moment. A thing in hand is corrected or asked about.
    enum class Mode { Line, Thing, Doubt, List };

    [[nodiscard]] int placeIndex() const;
    [[nodiscard]] const model::Thing *thingInHand() const;
    [[nodiscard]] std::vector<FieldSpec> thingFields(const model::Id &id);
    [[nodiscard]] std::vector<FieldSpec> listFields();
    [[nodiscard]] std::vector<ListRow> thingRows() const;
    [[nodiscard]] std::vector<ListRow> answerRows() const;
    [[nodiscard]] std::vector<ListRow> listRows() const;
    void showLine(std::size_t places);
    void showThing();
    void showDoubt();
    void showList();
    void toLine();
    void open(const model::Id &thing, Mode mode);
    void takeLine(const QString &line);
    void answer(const std::string &line);
    void readFile(const QString &path);
    void takeList();
    void removeInHand();
    void settle();
    void step(int by);
    void nextDoubt(int by);
    void refreshFindings();

    model::Id &m_place; // kept while other pages are shown
    model::Id m_thing;  // the thing in hand
    Mode m_mode = Mode::Line;
    std::optional<model::Id> m_cameFrom; // the place where she asked for the doubts
    int m_asked = 0; // questions so far: the answers of another one are other rows, which are heard
    bool m_answersTold = false; // how an answer is taken was said
    QString m_row, m_list;
    std::vector<model::ListedLine> m_listed;
};

/// True while something of a thing has to be asked: an open doubt, or no size.
[[nodiscard]] bool isDoubtful(const model::Thing &thing);
/// The question that is open, in words.
[[nodiscard]] QString doubtWords(const model::Thing &thing);

} // namespace app
