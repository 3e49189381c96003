#include "app/viewmodels/page_help.h"
#include <QCoreApplication>
#include <map>

namespace app {
namespace {

struct Help {
    Q_DECLARE_TR_FUNCTIONS(Help)
};

QString ownHelp(const QString &page) {
    const std::map<QString, QString> helps{
        {"entry",
         Help::tr("Type your passphrase and press Return. Your recovery code opens the records too.\n"
                  "The practice caseload has three invented clients; nothing of it is kept.")},
        {"entry-setup",
         Help::tr("Feltmark works out with you where things stand in a client's kitchen and how they are "
                  "marked.\n"
                  "Type your name as it shall stand on the papers, then a passphrase of 15 letters or more, "
                  "twice.\n"
                  "Nobody can open the records without it or the recovery code that you get next.\n"
                  "The practice caseload has three invented clients; nothing of it is kept.")},
        {"entry-code",
         Help::tr("Write the groups down, keep them away from this computer, then type one of them back.\n"
                  "They open the records when the passphrase is lost. They are shown only now.")},
        {"caseload",
         Help::tr(
             "Type any part of a name or code to find a client. Arrows go through the list, Return opens.\n"
             "{startVisit} starts a visit to the client in hand.")},
        {"client", Help::tr("Who the client is, how she reads, who lives here, what she must not eat.\n"
                            "{startVisit} starts a visit, {closeVisit} closes it, from every page.")},
        {"safety",
         Help::tr("Each answer is yes, no or not asked. Not asked counts as the more cautious answer.\n"
                  "Down answers yes, Up answers no; {nextGap} goes to the next question that was not asked.\n"
                  "What follows stands beside the answer; the program advises, you decide.")},
        {"sight",
         Help::tr("Type what the chart says, in its own notation: 6/24, 20/80, 0.6 logMAR, N12 at 40 cm.\n"
                  "A test that was not done: not tested, and why.")},
        {"reading",
         Help::tr(
             "Write the sheet and print it at full size. The client reads line by line, the largest first.\n"
             "For each line type seconds and wrong words: 4.2 s, 1 wrong. A line nobody could read: not "
             "read.\n"
             "{readBack} speaks the sentence to be read next, when headphones are on.\n"
             "The critical print size then sets the print of all papers.")},
        {"legible",
         Help::tr(
             "Whether a printed label can be read where it stands: arrows go through the labels.\n"
             "Distance and slant follow from eye height and shelf; light and sizes from the kitchen page.")},
        {"touch",
         Help::tr("Choose the finger first: each finger of each hand has results of its own.\n"
                  "Type what was felt: the marking of the lightest filament, millimetres of two points.\n"
                  "A test that was not done: not tested, and why.")},
        {"markertest",
         Help::tr("Which marks this client can tell apart. Lay the marks into the slots, put "
                  "headphones on, begin.\n"
                  "In the trial: J same, F different, U unsure, Space repeat, Backspace takes the "
                  "answer back. Only "
                  "slots are spoken. {blank} blanks the screen.")},
        {"markerkit",
         Help::tr("The marks at hand, with their features, what they bear and their cautions.\n"
                  "{correct} or Return changes the mark in hand; own marks can be added.\n"
                  "The kit sheet, every mark with what it bears, goes into the folder of the papers.")},
        {"reach",
         Help::tr("Type heights with their unit: 142 cm, 4 ft 8 in. From stature alone they are estimated.")},
        {"kitchen",
         Help::tr(
             "Add units clockwise from the door, each with its shelves from the top.\n"
             "Sizes that you leave out are usual ones and marked so. {correct} changes the place in hand.\n"
             "Several units go in one line of words, with the word corner where the wall turns; {readBack} "
             "says "
             "the map.\n"
             "On the drawing plus and minus zoom, 0 shows all, the arrows move it.")},
        {"appliances",
         Help::tr(
             "One line an appliance: oven: off, 180, 200. With more than one control: cooker: ring: off, 3; "
             "oven: off, 180.\n{correct} or Return changes the one in hand, {readBack} reads all of them.")},
        {"photos",
         Help::tr(
             "Photographs are scaled down and kept in the records alone. Each needs words that say what is "
             "to be seen.\nTake one only with consent; delete the file outside yourself.")},
        {"contents",
         Help::tr("One line a shelf: 4 chopped tomatoes, rice daily, olive oil glass.\n"
                  "{correct} corrects the thing in hand, {nextGap} goes to the next doubt, {readBack} reads "
                  "the shelf back.\n"
                  "The name again corrects it, remove rice takes it away, ajvar like pesto says what it is "
                  "like.")},
        {"plan", Help::tr("Arrows go through the lines. {why} says why, {overrule} overrules the line, with "
                          "its price, {readBack} "
                          "reads it again.\n"
                          "Bring up to date keeps what can stay; afresh looks for the best plan.")},
        {"goals",
         Help::tr(
             "A goal is one sentence with five levels, written before treatment. {correct} changes the goal "
             "in hand.")},
        {"papers",
         Help::tr("Make the papers, look at them and listen to them, then write them into a folder.\n"
                  "Files outside the program are not encrypted.")},
        {"followup", Help::tr("What last time left open, then the level of each goal with what was seen.\n"
                              "Bring the plan up to date on the plan page: it changes as little as it can.")},
        {"upkeep",
         Help::tr(
             "What is due, then every food by date: what is past, what nobody read, what to use first.\n"
             "{correct} goes to the dates of the food in hand. Days, region and prices are behind a button.\n"
             "What is past is thrown out only if the client agrees. Never taste to find out.")},
        {"progress", Help::tr("The levels of each goal over the visits, with what may be said of them.")},
        {"settings", Help::tr("Colours, text size and keys. An empty key is switched off.")},
    };
    const auto found = helps.find(page);
    return found == helps.end() ? QString() : found->second;
}

/// "{why}" as the key that is set for it, or what it does where it has none.
QString withKeys(QString words, const KeyModel &keys) {
    for (const KeyCommand &command : keys.rows())
        words.replace(QLatin1Char('{') + command.key + QLatin1Char('}'), keys.keyOrTitle(command.key));
    return words;
}

} // namespace

QString helpFor(const QString &page, const KeyModel &keys) {
    const QString everywhere = Help::tr(
        "Tab goes from field to field, {nextGap} to the next one that is open, {nextRegion} between the "
        "parts of the window, {goTo} to any page, shelf or thing.\n"
        "{undo} undoes the last action and says which. {whereAmI} says where you are. {allKeys} lists "
        "all keys.");
    return withKeys(ownHelp(page) + QLatin1Char('\n') + everywhere, keys);
}

} // namespace app
