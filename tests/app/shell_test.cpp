#include "app/preferences.h"
#include "app/viewmodels/form_model.h"
#include "app/viewmodels/row_window.h"
#include "app/viewmodels/settings_view_model.h"
#include "app/viewmodels/shell_view_model.h"
#include <QCoreApplication>
#include <QFont>
#include <QPalette>
#include <QSignalSpy>
#include <algorithm>
#include <gmock/gmock.h>
#include <map>

namespace app {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<FormField> fields(std::initializer_list<const char *> keys) {
    std::vector<FormField> made;
    for (const char *key : keys)
        made.push_back({.key = QString::fromLatin1(key)});
    return made;
}

QStringList keysOf(const FormModel &model) {
    QStringList keys;
    for (const FormField &field : model.rows())
        keys << field.key;
    return keys;
}

TEST(FormModel, tellsOfAChangedValueWithoutRebuildingAnyField) {
    FormModel model;
    model.setRows(fields({"width", "depth"}));
    QSignalSpy changes(&model, &FormModel::dataChanged), inserted(&model, &FormModel::rowsInserted),
        removed(&model, &FormModel::rowsRemoved), reset(&model, &FormModel::modelReset);
    std::vector<FormField> next = model.rows();
    next[1].value = "30";
    model.setRows(next);
    EXPECT_EQ(changes.size(), 1);
    EXPECT_EQ(inserted.size() + removed.size() + reset.size(), 0);
    EXPECT_EQ(model.data(model.index(1), model.roleNames().key("value")).toString(), "30");
}

TEST(FormModel, keepsTheFieldsThatStayWhenOthersComeGoOrMove) {
    FormModel model;
    model.setRows(fields({"a", "b", "c"}));
    QSignalSpy inserted(&model, &FormModel::rowsInserted), removed(&model, &FormModel::rowsRemoved),
        moved(&model, &FormModel::rowsMoved);
    model.setRows(fields({"c", "new", "a"}));
    EXPECT_EQ(keysOf(model), (QStringList{"c", "new", "a"}));
    EXPECT_EQ(inserted.size(), 1);
    EXPECT_EQ(removed.size(), 1);
    EXPECT_EQ(moved.size(), 1);
}

QStringList keysOf(RowWindow &window) {
    const QAbstractItemModel &rows = *window.rows();
    QStringList keys;
    for (int i = 0; i < rows.rowCount(); ++i)
        keys << rows.index(i, 0).data(rows.roleNames().key("key")).toString();
    return keys;
}

TEST(RowWindow, showsThePartOfALongListThatHoldsTheRowInHand) {
    RowModel list;
    const auto numbered = [](int from, int to) {
        std::vector<ListRow> rows;
        for (int i = from; i < to; ++i)
            rows.push_back({.key = QString::number(i)});
        return rows;
    };
    list.setRows(numbered(0, 10));
    RowWindow window;
    window.setSize(4);
    window.setList(&list);
    EXPECT_THAT(keysOf(window), ElementsAre("0", "1", "2", "3"));
    window.turnTo(5);
    EXPECT_EQ(window.first(), 4);
    EXPECT_THAT(keysOf(window), ElementsAre("4", "5", "6", "7"));
    window.turnTo(9);
    EXPECT_THAT(keysOf(window), ElementsAre("8", "9"));
    EXPECT_EQ(window.total(), 10);
    list.setRows(numbered(2, 14)); // two went in front, with them the part shown; four came behind
    EXPECT_THAT(keysOf(window), ElementsAre("6", "7", "8", "9"));
    list.setRows(numbered(2, 5));
    EXPECT_EQ(window.first(), 0);
    EXPECT_THAT(keysOf(window), ElementsAre("2", "3", "4"));
}

TEST(KeyModel, takesMoreThanOneKeyAndNone) {
    KeyModel keys;
    EXPECT_EQ(keys.setSequences("goTo", "Ctrl+J, F4"), QString());
    EXPECT_EQ(keys.sequencesOf("goTo"), (QStringList{"Ctrl+J", "F4"}));
    EXPECT_EQ(keys.setSequences("goTo", ""), QString());
    EXPECT_THAT(keys.sequencesOf("goTo"), IsEmpty());
}

class RefusedKeys : public testing::TestWithParam<const char *> {};

TEST_P(RefusedKeys, leaveTheKeysAsTheyWere) {
    KeyModel keys;
    EXPECT_NE(keys.setSequences("goTo", QString::fromLatin1(GetParam())), QString());
    EXPECT_EQ(keys.sequencesOf("goTo"), (QStringList{"Ctrl+G", "Ctrl+F"}));
}

// No key of that name; a letter that typing needs; taken by "where am I"; two keys in a row.
INSTANTIATE_TEST_SUITE_P(Typed, RefusedKeys, testing::Values("banana", "g", "F12", "Ctrl+K Ctrl+L"));

TEST(Shell, everyShippedKeyHasOneCommand) {
    QStringList seen;
    for (const KeyCommand &command : shippedKeys())
        for (const QString &sequence : command.sequences) {
            EXPECT_FALSE(seen.contains(sequence)) << sequence.toStdString();
            seen << sequence;
        }
}

TEST(Shell, saysThatAPageIsNotThereAndKeepsTheOldOne) {
    ShellViewModel shell;
    shell.addPage({"sight", "Sight", QUrl("qrc:/Sight.qml"), {}, ""});
    shell.goTo("sight");
    QSignalSpy said(&shell, &ShellViewModel::said);
    shell.goTo("nowhere");
    EXPECT_EQ(shell.page(), "sight");
    ASSERT_EQ(said.size(), 1);
    EXPECT_EQ(said[0][0].toString(), "There is no page of the name nowhere.");
}

TEST(Shell, speaksWhatLeavingAPageSaidWhenTheNextIsRead) {
    int none = 0;
    const QCoreApplication events(none, nullptr);
    ShellViewModel shell;
    shell.addPage({"sight", "Sight", QUrl("qrc:/Sight.qml"), {}, ""});
    shell.say("Said of the page before.");
    QObject::connect(&shell, &ShellViewModel::leaving, &shell, [&shell] { shell.say("Not an acuity: 6/."); });
    QSignalSpy said(&shell, &ShellViewModel::said);
    shell.goTo("sight");
    EXPECT_TRUE(said.isEmpty());
    EXPECT_EQ(shell.message(), "Not an acuity: 6/.");
    ASSERT_TRUE(said.wait(5000));
    EXPECT_EQ(said[0][0].toString(), "Not an acuity: 6/.");
}

TEST(Shell, showsNoSentenceOfThePageBeforeButSaysItAgain) {
    ShellViewModel shell;
    shell.addPage({"sight", "Sight", QUrl("qrc:/Sight.qml"), {}, ""});
    shell.say("Said of the page before.");
    shell.goTo("sight");
    EXPECT_EQ(shell.message(), "");
    QSignalSpy said(&shell, &ShellViewModel::said);
    shell.sayAgain();
    ASSERT_EQ(said.size(), 1);
    EXPECT_EQ(said[0][0].toString(), "Said of the page before.");
}

TEST(Shell, asksForTypingInHandBeforeItLeavesAPageOrLocks) {
    ShellViewModel shell;
    shell.addPage({"sight", "Sight", QUrl("qrc:/Sight.qml"), {}, ""});
    QStringList pageAtLeaving;
    QObject::connect(&shell, &ShellViewModel::leaving, [&] { pageAtLeaving << shell.page(); });
    shell.goTo("sight");
    shell.lock();
    EXPECT_EQ(pageAtLeaving, (QStringList{"", "sight"}));
}

TEST(Shell, keepsNothingOfTheClientBehindALock) {
    ShellViewModel shell;
    shell.addPage({"sight", "Sight", QUrl("qrc:/Sight.qml"), {}, ""});
    shell.setClient("Invented Person", "Visit 4");
    shell.setSteps({{"sight", 1, "Sight", "2 not tested", false, false}});
    shell.goTo("sight");
    shell.say("Undone: rice daily.");
    shell.findDestinations("");
    shell.lock();
    EXPECT_TRUE(shell.isLocked());
    EXPECT_EQ(shell.page(), "");
    EXPECT_EQ(shell.message(), "");
    EXPECT_EQ(shell.clientName(), "");
    EXPECT_EQ(shell.clientLine(), "");
    EXPECT_FALSE(shell.hasSteps());
    EXPECT_THAT(shell.messages()->rows(), IsEmpty());
    EXPECT_THAT(shell.destinations()->rows(), IsEmpty());
}

TEST(Shell, speaksTheSameSentenceTwiceAndListsTheNewestFirst) {
    ShellViewModel shell;
    QSignalSpy said(&shell, &ShellViewModel::said);
    shell.say("Saved.");
    shell.say("Saved.");
    shell.say("Not saved: disk full.");
    shell.sayAgain();
    EXPECT_EQ(said.size(), 4);
    EXPECT_EQ(said[3][0].toString(), "Not saved: disk full.");
    EXPECT_EQ(shell.messages()->rows().front().title, "Not saved: disk full.");
}

TEST(Shell, stepsTheTextThroughItsSizesAndSaysWhereItEnds) {
    ShellViewModel shell;
    std::vector<double> sizes;
    for (int i = 0; i < 6; ++i) {
        shell.larger();
        sizes.push_back(shell.textScale());
    }
    EXPECT_THAT(sizes, ElementsAre(1.25, 1.5, 2, 3, 4, 4));
    EXPECT_EQ(shell.message(), "Text is at its largest, 400 percent.");
    shell.smaller();
    EXPECT_EQ(shell.textScale(), 3);
}

TEST(Shell, goesToAStepByItsNumberAndSaysWhereItIs) {
    ShellViewModel shell;
    shell.addPage({"safety", "Safety", QUrl("qrc:/Safety.qml"), {}, ""});
    shell.addPage({"sight", "Sight", QUrl("qrc:/Sight.qml"), {}, ""});
    shell.setClient("Invented Person", "Visit 4");
    shell.setSteps({{"safety", 1, "Safety", "", true, false}, {"sight", 2, "Sight", "", false, false}});
    shell.goToStep(2);
    EXPECT_EQ(shell.page(), "sight");
    EXPECT_EQ(shell.whereAmI("Letter size, N"), "Invented Person. Step 2 of 2: Sight. Letter size, N.");
    shell.goToStep(7);
    EXPECT_EQ(shell.message(), "There is no step 7 here.");
}

TEST(Shell, findsPagesByAnyPartOfTheirName) {
    ShellViewModel shell;
    shell.addPage({"safety", "Safety", QUrl("qrc:/Safety.qml"), {}, ""});
    shell.addPage({"sight", "Sight", QUrl("qrc:/Sight.qml"), {}, ""});
    shell.findDestinations("IGH");
    ASSERT_EQ(shell.destinations()->rows().size(), 1U);
    EXPECT_EQ(shell.destinations()->rows()[0].key, "sight");
}

TEST(Shell, showsTheFirstOfManyAndSaysHowManyThereAre) {
    ShellViewModel shell;
    for (int i = 0; i < 20; ++i)
        shell.addPage(
            {QStringLiteral("p%1").arg(i), QStringLiteral("Under the sink %1").arg(i), QUrl(), {}, ""});
    shell.addPage({"sink", "Sink", QUrl(), {}, ""});
    shell.findDestinations("sink");
    EXPECT_EQ(shell.foundInAll(), 21);
    EXPECT_EQ(shell.destinations()->rows().size(), 15U);
    EXPECT_EQ(shell.destinations()->rows()[0].key, "sink") << "what begins with the words comes first";
    shell.findDestinations("");
    EXPECT_EQ(shell.destinations()->rows().size(), 21U) << "nothing typed: all of them";
}

TEST(Shell, blanksTheScreenAndGoesOn) {
    ShellViewModel shell;
    QSignalSpy changed(&shell, &ShellViewModel::blankChanged);
    shell.toggleBlank();
    EXPECT_TRUE(shell.isBlank());
    EXPECT_THAT(shell.message().toStdString(), HasSubstr("blank"));
    shell.toggleBlank();
    EXPECT_FALSE(shell.isBlank());
    EXPECT_EQ(changed.size(), 2);
}

TEST(Settings, keepWhatWasChosenAndRestoreIt) {
    ShellViewModel shell;
    SettingsViewModel settings(&shell);
    QSignalSpy kept(&settings, &SettingsViewModel::kept);
    settings.edit("theme", "High contrast, dark");
    EXPECT_EQ(shell.themeMode(), "contrast");
    EXPECT_TRUE(kept.contains(QVariantList{"theme", "contrast"}));
    ShellViewModel next;
    SettingsViewModel restored(&next);
    restored.restore([&](const QString &name) {
        for (const QVariantList &setting : kept)
            if (setting[0] == name)
                return setting[1].toString();
        return QString();
    });
    EXPECT_EQ(next.themeMode(), "contrast");
}

/// What was kept, as a later start reads it.
std::map<QString, QString> newestOf(const QSignalSpy &kept) {
    std::map<QString, QString> values;
    for (const QVariantList &setting : kept)
        values[setting[0].toString()] = setting[1].toString();
    return values;
}

QString shown(SettingsViewModel &settings, const QString &key) {
    const auto &rows = settings.form()->rows();
    const auto found = std::ranges::find(rows, key, &FormField::key);
    return found == rows.end() ? QString() : found->value;
}

TEST(Settings, keepOnlyWhatWasChanged) {
    ShellViewModel shell;
    SettingsViewModel settings(&shell);
    settings.setDesktop("dark", 1.5);
    QSignalSpy kept(&settings, &SettingsViewModel::kept);
    settings.edit("lockMinutes", "10 minutes");
    EXPECT_EQ(newestOf(kept), (std::map<QString, QString>{{"lockMinutes", "10"}}));
    shell.larger();
    EXPECT_EQ(newestOf(kept), (std::map<QString, QString>{{"lockMinutes", "10"}, {"textScale", "2"}}));
    EXPECT_EQ(shown(settings, "textScale"), "200 percent");
    EXPECT_EQ(shown(settings, "theme"), "As the desktop is");
}

TEST(Settings, followTheDesktopUntilSomethingElseIsChosenAndAgainWhenAsked) {
    std::map<QString, QString> file;
    const auto start = [&file](ShellViewModel &shell, SettingsViewModel &settings, const QString &theme,
                               double scale) {
        settings.setDesktop(theme, scale);
        settings.restore(
            [&](const QString &name) { return file.contains(name) ? file.at(name) : QString(); });
        QObject::connect(&settings, &SettingsViewModel::kept, &shell,
                         [&file](const QString &name, const QString &value) { file[name] = value; });
    };
    const auto at = [&](const QString &theme, double scale, auto &&act) {
        ShellViewModel shell;
        SettingsViewModel settings(&shell);
        start(shell, settings, theme, scale);
        act(shell, settings);
    };
    at("light", 1, [](auto &shell, auto &settings) {
        EXPECT_EQ(shell.themeMode(), "light");
        settings.edit("lockMinutes", "10 minutes");
        settings.edit("ownInk", "black");
    });
    at("contrast", 2, [](auto &shell, auto &settings) {
        EXPECT_EQ(shell.themeMode(), "contrast") << "the desktop changed";
        EXPECT_EQ(shell.textScale(), 2);
        EXPECT_EQ(shell.ownInk(), "black") << "one of the two alone was changed";
        settings.edit("theme", "Light");
    });
    at("light", 1.5, [](auto &shell, auto &settings) {
        EXPECT_EQ(shown(settings, "theme"), "Light") << "chosen, though the desktop is the same";
        EXPECT_EQ(shell.textScale(), 1.5) << "colours alone were chosen";
        settings.edit("textScale", "300 percent");
    });
    at("dark", 1, [](auto &shell, auto &settings) {
        EXPECT_EQ(shell.themeMode(), "light");
        EXPECT_EQ(shell.textScale(), 3);
        settings.edit("theme", "As the desktop is");
        EXPECT_EQ(shell.themeMode(), "dark");
        settings.edit("textScale", "As the desktop is");
        EXPECT_EQ(shell.textScale(), 1);
    });
    at("paper", 1.25, [](auto &shell, auto &) {
        EXPECT_EQ(shell.themeMode(), "paper");
        EXPECT_EQ(shell.textScale(), 1.25);
    });
}

// Contrast of #777777 on white is 4.48: W3C, technique G18.
TEST(Settings, refuseOwnColoursThatAreTooNearEachOther) {
    ShellViewModel shell;
    SettingsViewModel settings(&shell);
    settings.edit("theme", "Own colours");
    EXPECT_EQ(shell.themeMode(), "own");
    settings.edit("ownPaper", "white");
    settings.edit("ownInk", "#777777");
    EXPECT_NE(shell.ownInk(), "#777777");
    const auto ink = std::ranges::find(settings.form()->rows(), "ownInk", &FormField::key);
    ASSERT_NE(ink, settings.form()->rows().end());
    EXPECT_EQ(ink->value, "#777777");
    EXPECT_THAT(ink->error.toStdString(), HasSubstr("4.5 to 1"));
    settings.edit("ownInk", "navy");
    EXPECT_EQ(shell.ownInk(), "navy");
    settings.edit("ownInk", "reddish");
    EXPECT_EQ(shell.ownInk(), "navy");
}

TEST(Settings, takeShortSpeechAndGiveItBack) {
    ShellViewModel shell;
    SettingsViewModel settings(&shell);
    QSignalSpy kept(&settings, &SettingsViewModel::kept);
    settings.edit("speech", "Short: no hints");
    EXPECT_TRUE(shell.isShortSpeech());
    EXPECT_TRUE(kept.contains(QVariantList{"speech", "short"}));
    settings.edit("speech", "Full: hints once a page");
    EXPECT_FALSE(shell.isShortSpeech());
}

TEST(Settings, takeOnlyTheTimesThatAreOnOffer) {
    ShellViewModel shell;
    SettingsViewModel settings(&shell);
    settings.edit("lockMinutes", "15 minutes");
    EXPECT_EQ(shell.lockMinutes(), 15);
    settings.restore([](const QString &name) { return name == "lockMinutes" ? QString("9999") : QString(); });
    EXPECT_EQ(shell.lockMinutes(), 15);
}

TEST(Preferences, beginWithTheColoursAndTextSizeOfTheDesktop) {
    const auto desktop = [](const QColor &paper, const QColor &ink) {
        QPalette palette;
        palette.setColor(QPalette::Window, paper);
        palette.setColor(QPalette::WindowText, ink);
        return themeOf(palette);
    };
    EXPECT_EQ(desktop("#efefef", "#000000"), "light");
    EXPECT_EQ(desktop("#2a2a2a", "#f0f0f0"), "dark");
    EXPECT_EQ(desktop("#000000", "#ffffff"), "contrast");
    EXPECT_EQ(desktop("#ffffff", "#000000"), "paper");
    EXPECT_EQ(textScaleOf(QFont("Sans", 9), 96), 1);
    EXPECT_EQ(textScaleOf(QFont("Sans", 11), 96), 1);
    EXPECT_EQ(textScaleOf(QFont("Sans", 11), 192), 2);
    EXPECT_EQ(textScaleOf(QFont("Sans", 16), 96), 1.5);
    EXPECT_EQ(textScaleOf(QFont("Sans", 72), 96), 4);
}

TEST(Settings, restoreKeysThatChangedPlacesAndOnesThatAreOff) {
    ShellViewModel shell;
    SettingsViewModel settings(&shell);
    const std::map<QString, QString> kept{{"key.help", "F2"}, {"key.correct", "F1"}, {"key.why", "off"}};
    settings.restore([&](const QString &name) { return kept.contains(name) ? kept.at(name) : QString(); });
    EXPECT_EQ(shell.keys()->keyOf("help"), "F2");
    EXPECT_EQ(shell.keys()->keyOf("correct"), "F1");
    EXPECT_EQ(shell.keys()->keyOf("why"), "");
    EXPECT_EQ(shell.keys()->keyOf("goTo"), "Ctrl+G");
}

TEST(Settings, showARefusedKeyAsItWasTypedWithTheReason) {
    ShellViewModel shell;
    SettingsViewModel settings(&shell);
    settings.edit("key.help", "F12");
    for (const FormField &field : settings.form()->rows())
        if (field.key == "key.help") {
            EXPECT_EQ(field.value, "F12");
            EXPECT_EQ(field.error, "F12 is taken: Where am I. Choose another key, or change that one first.");
        }
    EXPECT_EQ(shell.keys()->keyOf("help"), "F1");
}

} // namespace
} // namespace app
