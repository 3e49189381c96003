#include "app/pages/upkeep_page.h"
#include "app/session.h"
#include <gmock/gmock.h>

namespace app {
namespace {

class Upkeep : public ::testing::Test {
protected:
    void SetUp() override {
        session.openPractice();
        const auto clients = session.caseload();
        ASSERT_TRUE(session.openClient(clients->front().id));
        page.refresh();
    }
    FormField field(const QString &key) {
        for (const auto &row : page.form()->rows())
            if (row.key == key)
                return row;
        return {.key = "no such field"};
    }
    const ListRow &row(const QString &title) {
        const auto &rows = page.rows()->rows();
        return *std::ranges::find(rows, title, &ListRow::title);
    }
    const model::Thing &thing(const std::string &name) {
        return *std::ranges::find(session.record().things, name, &model::Thing::name);
    }
    Session session;
    ShellViewModel shell;
    UpkeepPage page{session, shell};
};

TEST_F(Upkeep, listsFoodAloneAndBeginsWithItsFirstRow) {
    ASSERT_FALSE(page.rows()->rows().empty());
    for (const ListRow &one : page.rows()->rows())
        EXPECT_NE(one.title, "bleach");
    EXPECT_EQ(field("printed").label, "Date on the pack of " + page.rows()->rows().front().title);
}

TEST_F(Upkeep, aDateIsReadAndSortsTheList) {
    page.moved(row("rice").key);
    page.edit("printed", "use by 1 January 2020");
    EXPECT_EQ(page.rows()->rows().front().title, "rice");
    EXPECT_EQ(page.rows()->rows().front().flag, "past use by");
    EXPECT_EQ(page.rows()->rows().front().section, "Past its date");
    ASSERT_TRUE(session.undo());
    EXPECT_EQ(row("rice").flag, "");
}

TEST_F(Upkeep, whatCannotBeReadStaysInItsFieldWithASentence) {
    page.moved(row("rice").key);
    page.edit("printed", "use by soon");
    EXPECT_EQ(field("printed").value, "use by soon");
    EXPECT_FALSE(field("printed").error.isEmpty());
    page.edit("openedOn", "1 January 2199");
    EXPECT_TRUE(field("openedOn").error.contains("still to come"));
    EXPECT_FALSE(thing("rice").bestBefore.has_value() || thing("rice").opened.has_value());
}

TEST_F(Upkeep, openedAndNewPackCountFromToday) {
    page.moved(row("rice").key);
    page.act("opened");
    EXPECT_EQ(thing("rice").opened, session.today());
    page.act("newPack");
    EXPECT_EQ(thing("rice").bought, session.today());
    EXPECT_FALSE(thing("rice").opened.has_value());
}

TEST_F(Upkeep, theDaysThatTheClientChoseAreKept) {
    page.act("settings");
    page.edit("fridgeDay", "Wednesday");
    page.edit("roundDay", "32");
    EXPECT_FALSE(field("roundDay").error.isEmpty());
    page.edit("roundDay", "31");
    page.edit("region", "United States");
    page.edit("currency", "pounds");
    page.edit("potPrice", "3,5");
    ASSERT_TRUE(session.record().upkeep.has_value());
    const model::UpkeepWishes &wishes = *session.record().upkeep;
    EXPECT_EQ(wishes.fridgeWeekday, 3);
    EXPECT_EQ(wishes.roundDay, 31);
    EXPECT_EQ(wishes.region, model::DateRegion::UnitedStates);
    EXPECT_EQ(wishes.currency, "pounds");
    EXPECT_DOUBLE_EQ(wishes.potPrice, 3.5);
    page.edit("fridgeDay", "A week after the plan, and so on");
    EXPECT_FALSE(session.record().upkeep->fridgeWeekday.has_value());
}

TEST_F(Upkeep, aRoundIsNotedAsDone) {
    page.act("fridgeDone");
    EXPECT_EQ(session.record().upkeep->fridgeDone, session.today());
    page.act("roundDone");
    EXPECT_EQ(session.record().upkeep->roundDone, session.today());
}

} // namespace
} // namespace app
