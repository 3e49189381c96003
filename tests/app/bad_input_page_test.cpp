#include "app/pages/plan_page.h"
#include "app/pages/unprintable.h"
#include "app/session.h"
#include "model/kit.h"
#include "model/planning.h"
#include <QTest>
#include <gmock/gmock.h>

namespace app {
namespace {

constexpr int longEnough = 120'000; // ms

struct BadInput {
    const char *name;
    void (*spoil)(model::Case &);
    const char *said; // of the message; "Plan ready" where a plan is made all the same
};

void addShelf(model::Case &record) {
    model::Unit unit;
    unit.id = model::newId();
    unit.name = "larder";
    record.units = {unit};
    model::Place shelf;
    shelf.id = model::newId();
    shelf.unit = unit.id;
    shelf.name = "shelf";
    record.places = {shelf};
}

void add(model::Case &record, const std::string &line) {
    const auto items = model::parseContents(line);
    for (const auto &item : *items) {
        record.things.push_back(item.thing);
        record.things.back().id = model::newId();
    }
}

void pin(model::Case &record, std::size_t thing, bool forbid) {
    record.overrules.push_back(
        {model::newId(), record.things[thing].id, record.places[0].id, forbid, {}, std::nullopt});
}

/// Room for one of two things.
void narrow(model::Case &record) {
    record.places[0].width = model::Length{{20}, "", model::Basis::Measured};
    for (model::Thing &thing : record.things)
        thing.width = model::Length{{15}, "", model::Basis::Measured};
    record.places.push_back(record.places[0]);
    record.places[1].id = model::newId();
    record.places[1].name = "other shelf";
    record.places[1].order = 1;
}

void weighNothing(model::PlanWishes &wishes) {
    for (const auto &weight : model::weightInfos())
        wishes.weights.*weight.value = 0;
}

/// The page of the plan for a client of whom nothing is known, with one shelf without size or light.
class PlanOfBadInput : public ::testing::TestWithParam<BadInput> {};

TEST_P(PlanOfBadInput, isAPlanOrASentence) {
    Session session;
    session.openPractice();
    ASSERT_TRUE(session.addClient("Invented Nobody", "I0"));
    ShellViewModel shell;
    PlanPage page(session, shell);
    ASSERT_TRUE(session.edit("all", "test", GetParam().spoil));
    page.refresh();
    page.command("why");
    EXPECT_EQ(shell.message(), "There is no plan yet. Work it out first.");
    page.act("make");
    ASSERT_TRUE(QTest::qWaitFor([&] { return shell.busyWith().isEmpty(); }, longEnough));
    EXPECT_THAT(shell.message().toStdString(), testing::HasSubstr(GetParam().said));
    const bool planned = session.record().plan && !session.record().plan->lines.empty();
    EXPECT_EQ(planned, std::string(GetParam().said) == "Plan ready");
    if (session.record().plan && !session.record().plan->shortages.empty()) {
        const std::string whole = session.record().plan->shortages.front().sentence;
        const auto end = whole.find(". ");
        ASSERT_NE(end, std::string::npos) << whole;
        EXPECT_THAT(shell.message().toStdString(), testing::HasSubstr("in the findings of this page."));
        EXPECT_THAT(shell.message().toStdString(), testing::Not(testing::HasSubstr(whole.substr(end + 2))))
            << "only the first sentence is spoken";
        const auto &found = page.findings()->rows();
        EXPECT_TRUE(std::ranges::any_of(found, [&](const FindingRow &row) {
            return row.answer.toStdString().find(whole) != std::string::npos;
        }));
    }
    for (const char *key : {"revise", "keepHere", "notHere", "weights", "compare", "lines", "forget"})
        page.act(key); // none of them may fall over it
    page.command("why");
    ASSERT_TRUE(QTest::qWaitFor([&] { return shell.busyWith().isEmpty(); }, longEnough));
}

INSTANTIATE_TEST_SUITE_P(
    Each, PlanOfBadInput,
    ::testing::Values(BadInput{"noPlaces", [](model::Case &r) { add(r, "rice"); }, "place"},
                      BadInput{"noThings", addShelf, "thing"},
                      BadInput{"nothingAtAll", [](model::Case &r) { r.client.contact = "none"; }, "place"},
                      BadInput{"sameNames",
                               [](model::Case &r) {
                                   addShelf(r);
                                   add(r, "salt, salt, salt");
                               },
                               "Plan ready"},
                      BadInput{"noLightAndNoSize",
                               [](model::Case &r) {
                                   addShelf(r);
                                   add(r, "rice, sugar");
                               },
                               "Plan ready"},
                      BadInput{"pinsThatContradict",
                               [](model::Case &r) {
                                   addShelf(r);
                                   add(r, "rice, sugar");
                                   narrow(r);
                                   pin(r, 0, false);
                                   pin(r, 1, false);
                               },
                               "No plan possible"},
                      BadInput{"noPlaceIsAllowed",
                               [](model::Case &r) {
                                   addShelf(r);
                                   add(r, "rice, sugar");
                                   pin(r, 0, true);
                               },
                               "No plan possible"},
                      BadInput{"weightsOfNought",
                               [](model::Case &r) {
                                   addShelf(r);
                                   add(r, "rice, sugar");
                                   r.wishes.emplace().id = model::newId();
                                   weighNothing(*r.wishes);
                               },
                               "Plan ready"},
                      BadInput{"absurdWeights",
                               [](model::Case &r) {
                                   addShelf(r);
                                   add(r, "rice, sugar");
                                   r.wishes.emplace().id = model::newId();
                                   r.wishes->weights.walk = -7;
                               },
                               "not from 0 to 1000"},
                      BadInput{"noMarksInTheKit",
                               [](model::Case &r) {
                                   addShelf(r);
                                   add(r, "rice, sugar");
                                   for (const auto &marker : model::wholeKitOf(r))
                                       (void)model::keepMark(r, marker, false);
                               },
                               "Plan ready"},
                      BadInput{"noMediumAtAll",
                               [](model::Case &r) {
                                   addShelf(r);
                                   add(r, "rice, sugar");
                                   model::Measurement none;
                                   none.id = model::newId();
                                   none.test = model::Test::AcceptedMarks;
                                   none.typed = "none";
                                   r.measurements.push_back(none);
                               },
                               "Plan ready"}),
    [](const auto &one) { return std::string(one.param.name); });

TEST(WhereTheyStand, namesTheThingsWhoseCharactersNoFontHas) {
    model::Case record;
    addShelf(record);
    add(record, "rice, \xF0\x9F\x8D\x85 sauce");
    const QString tomato = "No font on this computer has \xF0\x9F\x8D\x85 (U+1F345).";
    EXPECT_EQ(whereTheyStand(tomato, record), " In: \xF0\x9F\x8D\x85 sauce.");
    record.things.back().place = record.places[0].id;
    EXPECT_EQ(whereTheyStand(tomato, record), " In: \xF0\x9F\x8D\x85 sauce, larder, shelf.");
    EXPECT_EQ(whereTheyStand("No font on this computer has it (U+1F346).", record), "");
    EXPECT_EQ(whereTheyStand("Disk full.", record), "");
    for (int i = 0; i < 5; ++i)
        record.things.emplace_back().name = "\xF0\x9F\x8D\x85 " + std::to_string(i);
    EXPECT_TRUE(whereTheyStand(tomato, record).endsWith(" And 3 more."));
}

} // namespace
} // namespace app
