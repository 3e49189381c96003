#include "app/pages/appliances_page.h"
#include "app/pages/contents_page.h"
#include <algorithm>
#include <gmock/gmock.h>

namespace app {
namespace {

using testing::HasSubstr;

struct Opened {
    Opened() {
        session.openPractice();
        const auto clients = session.caseload();
        const auto nora = std::ranges::find(*clients, std::string("DEMO-N"), &model::ClientSummary::code);
        EXPECT_TRUE(session.openClient(nora->id));
    }
    Session session;
    ShellViewModel shell;
};

TEST(Appliances, areTakenInOneLineAndToldWhatIsMarked) {
    Opened opened;
    AppliancesPage page(opened.session, opened.shell);
    page.refresh();
    const auto before = opened.session.record().appliances.size();
    page.edit("appliance", "washing machine: off, 30, 40, 60");
    ASSERT_EQ(opened.session.record().appliances.size(), before + 1);
    EXPECT_EQ(opened.session.record().appliances.back().name, "washing machine");
    EXPECT_THAT(opened.shell.message().toStdString(), testing::MatchesRegex("washing machine[.] .*60[.]"));
}

TEST(Appliances, thatAreNotUnderstoodChangeNothing) {
    Opened opened;
    AppliancesPage page(opened.session, opened.shell);
    page.refresh();
    const auto before = opened.session.record();
    page.edit("appliance", "washing machine");
    EXPECT_EQ(opened.session.record(), before);
    EXPECT_EQ(page.form()->rows().front().value, "washing machine");
    EXPECT_THAT(page.form()->rows().front().error.toStdString(), HasSubstr("then a colon"));
}

TEST(Appliances, keepTheHeatThatWasMeasuredAndCanBeRemoved) {
    Opened opened;
    AppliancesPage page(opened.session, opened.shell);
    page.refresh();
    page.activated(QString::fromStdString(opened.session.record().appliances.front().id.text));
    page.edit("heat", "131 F");
    EXPECT_NEAR(opened.session.record().appliances.front().heat->value, 55, 1e-9);
    const auto count = opened.session.record().appliances.size();
    page.act("remove");
    EXPECT_EQ(opened.session.record().appliances.size(), count - 1);
}

TEST(Groups, takeAnotherNameAsAWhole) {
    Opened opened;
    const auto &things = opened.session.record().things;
    const auto first = std::ranges::find(things, std::string("tins"), &model::Thing::group);
    ASSERT_NE(first, things.end());
    model::Id place = *first->place;
    ContentsPage page(opened.session, opened.shell, place);
    page.refresh();
    page.activated(QString::fromStdString(first->id.text));
    page.edit("groupName", "cans");
    EXPECT_EQ(std::ranges::count(opened.session.record().things, std::string("tins"), &model::Thing::group),
              0);
    EXPECT_GT(std::ranges::count(opened.session.record().things, std::string("cans"), &model::Thing::group),
              1);
}

} // namespace
} // namespace app
