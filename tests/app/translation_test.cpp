#include "app/accessible_text.h"
#include "app/local_words.h"
#include "app/page_image_provider.h"
#include "app/viewmodels/app_shell.h"
#include "layout_faults.h"
#include "model/contents.h"
#include "model/findings.h"
#include "model/kit.h"
#include "model/planning.h"
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QRegularExpression>
#include <QTranslator>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>
#include <gmock/gmock.h>
#include <iostream>
#include <map>
#include <set>

Q_IMPORT_QML_PLUGIN(FeltmarkPlugin)

/// How much of what is shown and spoken is in the language of the window: every sentence of the program is
/// translated into full-width letters by pseudo_language.py, so plain letters are either a record's or not
/// translated.
namespace {

/// What is known to stay as it is written, with the reason; the list shrinks as more is translated.
struct Kept {
    const char *pattern;
    const char *why;
};
constexpr std::array kept{
    Kept{"\\d{1,2} [A-Z][a-z]+ \\d{4}", "dates: typed as they are shown"},
    Kept{"\\d+(\\.\\d+)? (cm|kg)\\b", "lengths and weights in fields: typed as they are shown"},
    Kept{"\\b(gluten|peanuts|nuts|milk|fish|eggs|soya|celery|mustard|sesame|crustaceans|sulphites|lupin|"
         "molluscs)\\b",
         "keys of allergens: typed as they are shown"},
    Kept{"\\b(right hand|left hand|thumb|index|middle|ring|little)\\b", "fingers: stored as they are chosen"},
    Kept{"\\b(standing|seated|women's|men's)", "choices of tests: stored as they are chosen"},
    Kept{"\\b(right|left)(?= \\x{ff45}\\x{ff59}\\x{ff45})", "sides: also keys"},
    Kept{"\\bindefinitely\\b", "words of the keeping-time data"},
    Kept{"\\bat\\b", "results with their distance: typed as they are shown"},
    Kept{"(?<=\\x{ff34}\\x{ff52}\\x{ff59} ).*(?=\\. \\x{ff2b}\\x{ff45}\\x{ff50}\\x{ff54})",
         "examples: in the words that are read"},
    Kept{"(Ctrl|Alt|Shift|Meta)\\+\\S+|\\bF\\d+\\b|\\b(Escape|Menu|Return|Space)\\b",
         "names of keys, from Qt"},
    Kept{"\\b(jpeg|jpg|png)\\b", "endings of files"},
    Kept{"(^|\\s)/[\\w/.-]+", "folders"}};

void add(QStringList &words, const std::string &own) {
    if (!own.empty())
        words << QString::fromStdString(own);
}

void addThings(const model::Case &record, QStringList &words) {
    for (const auto &thing : record.things)
        for (const auto *own : {&thing.name, &thing.group, &thing.sub, &thing.said, &thing.like,
                                &thing.packSize, &thing.note, &thing.directions, &thing.markInUse})
            add(words, *own);
    for (const auto &appliance : record.appliances) {
        add(words, appliance.name);
        for (const auto &control : appliance.controls) {
            add(words, control.name);
            for (const auto &setting : control.settings)
                add(words, setting);
        }
    }
}

void addPerson(const model::Case &record, QStringList &words) {
    const auto &client = record.client;
    for (const auto *own : {&client.name, &client.code, &client.contact, &client.referredBy, &client.question,
                            &client.language, &client.whomToAsk})
        add(words, *own);
    for (const QString &part : QString::fromStdString(client.name).split(u' '))
        words << part;
    const auto &home = record.household;
    for (const auto *own : {&home.people, &home.whoShops, &home.whoCooks, &home.whoPutsAway,
                            &home.whoReadsPrint, &record.diet.other})
        add(words, *own);
    for (const auto &fact : record.diet.facts)
        add(words, fact);
    for (const auto &[question, answer] : record.safety.answers)
        add(words, answer.note);
    for (const auto &test : record.measurements)
        for (const auto *own :
             {&test.typed, &test.distanceTyped, &test.chart, &test.method, &test.notTestedBecause})
            add(words, *own);
}

/// The words of a record that are its own: names, notes, what was typed.
QStringList ownWords(const model::Case &record) {
    QStringList words;
    addPerson(record, words);
    addThings(record, words);
    for (const auto &unit : record.units)
        add(words, unit.name);
    for (const auto &place : record.places)
        add(words, place.name);
    for (const auto &goal : record.goals) {
        add(words, goal.sentence);
        for (const auto &level : goal.levels)
            add(words, level);
    }
    for (const auto &rating : record.ratings)
        add(words, rating.evidence);
    for (const auto &visit : record.visits)
        for (const auto *own : {&visit.whoWasThere, &visit.note, &visit.carriedOver})
            add(words, *own);
    for (const auto &wish : record.overrules) {
        add(words, wish.reason);
        add(words, wish.wording);
    }
    for (const auto &marker : model::wholeKitOf(record)) // data, as the catalogue is: names, feel, fixing
        for (const auto *own : {&marker.name, &marker.feel, &marker.howToFix, &marker.caution})
            add(words, *own);
    if (record.plan)
        for (const auto &line : record.plan->lines)
            add(words, line.labelText);
    return words;
}

/// Without the record's own words, longest first; no part of a longer word is one.
class OwnWords {
public:
    explicit OwnWords(QStringList words) {
        words.removeDuplicates();
        std::ranges::sort(words, std::ranges::greater(), &QString::size);
        for (const QString &word : words)
            if (word.contains(QRegularExpression(QStringLiteral("[A-Za-z]"))))
                m_words.emplace_back(
                    QStringLiteral("(?<![A-Za-z])%1(?![A-Za-z])").arg(QRegularExpression::escape(word)),
                    QRegularExpression::CaseInsensitiveOption);
    }
    [[nodiscard]] QString removedFrom(QString text) const {
        for (const auto &word : m_words)
            text.remove(word);
        return text;
    }

private:
    std::vector<QRegularExpression> m_words;
};

bool hasWords(const QString &text) {
    static const QRegularExpression word(QStringLiteral("[A-Za-z]{2,}"));
    return word.match(text).hasMatch();
}

QString withoutKept(QString text, std::map<std::string, int> &counts) {
    for (const Kept &one : kept) {
        const QString rest = QString(text).remove(QRegularExpression(QString::fromLatin1(one.pattern)));
        counts[one.why] += rest == text ? 0 : 1;
        text = rest;
    }
    return text;
}

class OtherLanguage : public testing::Test {
protected:
    OtherLanguage() : m_pictures(new app::PageImageProvider) {
        EXPECT_TRUE(m_translator.load(QStringLiteral(PSEUDO_LANGUAGE)));
        QCoreApplication::installTranslator(&m_translator);
        app::translateModel(true);
        m_shell = std::make_unique<app::AppShell>(std::filesystem::path(), model::KeyCost{}, *m_pictures);
        QObject::connect(m_shell.get(), &app::ShellViewModel::said, m_shell.get(),
                         [this](const QString &text) { see(text); });
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_engine.addImageProvider(QStringLiteral("page"), m_pictures); // the engine owns it
        m_shell->openPracticeAtStart();
        m_engine.setInitialProperties(
            {{QStringLiteral("shell"), QVariant::fromValue<app::ShellViewModel *>(m_shell.get())}});
        m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/Main.qml")));
    }
    ~OtherLanguage() override {
        app::translateModel(false);
        QCoreApplication::removeTranslator(&m_translator);
    }

    void see(const QString &text) {
        if (!text.trimmed().isEmpty())
            m_seen[m_shell->page()].insert(text);
    }
    void see(const QStringList &texts) {
        for (const QString &text : texts)
            see(text);
    }
    void seeRows(const std::vector<app::ListRow> &rows) {
        for (const auto &row : rows)
            see({row.title, row.amount, row.facts, row.usual, row.flag, row.spoken, row.section});
    }
    void seePage(app::PageViewModel &page) {
        see({page.title(), page.kicker(), page.rowsLabel(), page.rowsEmpty(), page.drawingWords(),
             page.pictureWords(), page.trialWords(), page.trialDetail()});
        see(page.reading());
        for (const auto &field : page.form()->rows()) {
            see({field.label, field.hint, field.value, field.unit, field.error, field.note,
                 field.unavailable});
            see(field.choices);
        }
        for (const auto &finding : page.findings()->rows())
            see({finding.question, finding.answer, finding.reason});
        for (const auto &action : page.actions()->rows())
            see({action.title, action.unavailable});
        seeRows(page.rows()->rows());
    }
    void seeItems(const QQuickItem *item) {
        if (!item->isVisible())
            return;
        for (const char *name : {"text", "placeholderText"})
            see(item->property(name).toString());
        for (const QQuickItem *child : item->childItems())
            seeItems(child);
    }
    void seeScreen() {
        EXPECT_TRUE(layout::settle(window()->contentItem())) << m_shell->page().toStdString();
        seeItems(window()->contentItem());
        see({m_shell->pageTitle(), m_shell->helpText(), m_shell->clientLine(), m_shell->stepLine(),
             m_shell->message(), m_shell->whereAmI({})});
        for (const auto &step : m_shell->steps()->rows())
            see({step.title, step.state});
        if (auto *page = m_shell->pageProperties().value(QStringLiteral("vm")).value<app::PageViewModel *>())
            seePage(*page);
    }
    /// The page, and what it says of each of its rows.
    void open(const QString &key) {
        m_shell->goTo(key);
        seeScreen();
        auto *page = m_shell->pageProperties().value(QStringLiteral("vm")).value<app::PageViewModel *>();
        if (page == nullptr)
            return;
        QStringList keys;
        for (const auto &row : page->rows()->rows())
            keys << row.key;
        for (const QString &row : keys) {
            page->moved(row);
            seePage(*page);
        }
    }
    QQuickWindow *window() { return qobject_cast<QQuickWindow *>(m_engine.rootObjects().value(0)); }

    /// So that the plan page has something to say, and to explain.
    void plan() {
        auto &session = m_shell->session();
        const model::Date on = session.today();
        const auto made = model::makePlan(session.record(), model::findingsOf(session.record(), on), {}, on);
        ASSERT_TRUE(made.has_value());
        ASSERT_TRUE(session.edit(QStringLiteral("plan"), "test", [&](model::Case &r) { r.plan = *made; }));
    }
    /// Every field where something is typed gets what it cannot take, for what is said beside it.
    void typeNonsense() {
        for (const char *name : {"safety", "sight", "reading", "touch", "reach", "kitchen", "contents",
                                 "appliances", "goals", "client"}) {
            m_shell->goTo(QString::fromLatin1(name));
            auto *page = m_shell->pageProperties().value(QStringLiteral("vm")).value<app::PageViewModel *>();
            ASSERT_NE(page, nullptr);
            const std::vector<app::FormField> fields = page->form()->rows();
            for (const auto &field : fields)
                if (field.kind == app::FieldKind::Text || field.kind == app::FieldKind::Number ||
                    field.kind == app::FieldKind::Date)
                    page->edit(field.key, QStringLiteral("?!"));
            seePage(*page);
        }
    }

    /// What is shown of every page of every invented client.
    void openAll() {
        open(QStringLiteral("caseload"));
        const auto clients = m_shell->session().caseload();
        ASSERT_TRUE(clients.has_value());
        for (const auto &client : *clients) {
            m_shell->goTo(QStringLiteral("open:") + QString::fromStdString(client.id.text));
            plan();
            m_own << ownWords(m_shell->session().record());
            for (const char *page : {"client", "safety", "sight", "reading", "legible", "touch", "markertest",
                                     "markerkit", "reach", "kitchen", "contents", "appliances", "photos",
                                     "plan", "goals", "papers", "followup", "upkeep", "progress"})
                open(QString::fromLatin1(page));
            m_shell->findDestinations({});
            seeRows(m_shell->destinations()->rows());
            typeNonsense();
        }
        open(QStringLiteral("settings"));
        for (const auto &entry : model::catalogue())
            m_own << QString::fromStdString(entry.name) << QString::fromStdString(entry.pack);
    }

    app::PageImageProvider *m_pictures;
    QTranslator m_translator;
    std::unique_ptr<app::AppShell> m_shell;
    QQmlApplicationEngine m_engine;
    std::map<QString, std::set<QString>> m_seen; // by page
    QStringList m_own;
};

TEST_F(OtherLanguage, isOnEveryPageOfTheInventedClients) {
    ASSERT_NE(window(), nullptr);
    window()->resize(1280, 800);
    openAll();
    const OwnWords own(m_own);
    std::map<std::string, int> counts;
    std::size_t all = 0, left = 0;
    for (const auto &[page, texts] : m_seen) {
        std::size_t here = 0;
        for (const QString &text : texts) {
            if (!hasWords(text))
                continue;
            const QString rest = withoutKept(own.removedFrom(text), counts);
            if (hasWords(rest)) {
                ++here;
                std::cout << page.toStdString() << ": " << rest.left(200).toStdString() << '\n';
            }
        }
        std::cout << page.toStdString() << ": " << texts.size() << " texts, " << here << " not translated\n";
        all += texts.size();
        left += here;
    }
    std::cout << all << " texts, " << left << " not translated; kept as they are written:\n";
    for (const auto &[why, count] : counts)
        std::cout << "  " << count << " with " << why << '\n';
    EXPECT_GT(all, 2500U);
    EXPECT_EQ(left, 0U) << "new texts need their translation too";
}

} // namespace

int main(int argc, char **argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    app::installTextAccessible();
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
