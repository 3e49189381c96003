#include "app/page_image_provider.h"
#include "app/viewmodels/app_shell.h"
#include "model/demo.h"
#include <QCoreApplication>
#include <QEvent>
#include <QTime>
#include <algorithm>
#include <gmock/gmock.h>

namespace app {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

class Practice : public ::testing::Test {
protected:
    // Pages that were left go with the next events, while what they show is still there.
    void TearDown() override { QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); }
    void open(const std::string &name) {
        shell.openPracticeAtStart();
        const auto clients = shell.session().caseload();
        for (const auto &client : *clients)
            if (client.name.find(name) != std::string::npos)
                shell.goTo("open:" + text(client.id.text));
        ASSERT_TRUE(shell.session().hasClient());
    }
    std::string partner(const char *page) {
        shell.goTo(QLatin1String(page));
        return shell.partnerLines().join(QLatin1Char('\n')).toStdString();
    }
    PageImageProvider pictures;
    AppShell shell{{}, model::KeyCost::cheapest(), pictures};
};

TEST_F(Practice, partnerViewShowsThePageInHandInWords) {
    open("Nora");
    EXPECT_TRUE(shell.partnerLines().isEmpty()) << "closed";
    shell.togglePartner();
    EXPECT_THAT(partner("kitchen"), HasSubstr("top shelf"));
    EXPECT_EQ(partner("sight"), "Sight\nThis page is not shown to others.");
    shell.togglePartner();
    EXPECT_TRUE(shell.partnerLines().isEmpty());
}

TEST_F(Practice, partnerViewNamesNobodyOnAnyPage) {
    open("Tilda");
    shell.togglePartner();
    ASSERT_TRUE(shell.session().edit(
        "note", "test", [](model::Case &r) { r.places.front().name = "shelf of " + r.client.name; }));
    const auto &client = shell.session().record().client;
    for (const char *page :
         {"client", "safety", "sight", "touch", "reach", "kitchen", "contents", "plan", "goals", "papers",
          "followup", "progress", "markertest", "markerkit", "photos", "legible"}) {
        const std::string shown = partner(page);
        EXPECT_FALSE(shown.empty()) << page;
        for (const QString &part : text(client.name).split(QLatin1Char(' ')))
            EXPECT_THAT(shown, Not(HasSubstr(part.toStdString()))) << page;
        EXPECT_THAT(shown, Not(HasSubstr(client.code))) << page;
    }
    EXPECT_THAT(partner("kitchen"), HasSubstr("shelf of the client"));
}

// Answers about the person, and of a marker test: whoever looks on must not see them.
TEST_F(Practice, partnerViewHoldsBackEveryPageAboutThePerson) {
    open("Nora");
    shell.togglePartner();
    for (const char *page : {"client", "safety", "sight", "touch", "reach", "goals", "papers", "followup",
                             "progress", "markertest", "markerkit", "photos", "settings", "caseload"}) {
        const std::string shown = partner(page);
        EXPECT_THAT(shown, ::testing::EndsWith("This page is not shown to others.")) << page;
        EXPECT_EQ(std::ranges::count(shown, '\n'),
                  page == std::string("settings") || page == std::string("caseload") ? 0 : 1)
            << page;
    }
}

TEST_F(Practice, partnerViewShowsWorkWithoutWhatWasMeasured) {
    open("Nora");
    shell.togglePartner();
    for (const char *page : {"kitchen", "contents", "plan", "appliances", "upkeep", "legible", "reading"})
        EXPECT_THAT(partner(page), Not(HasSubstr("not shown"))) << page;
    EXPECT_THAT(partner("upkeep"), HasSubstr("Supplies"));
    EXPECT_THAT(partner("upkeep"), Not(HasSubstr("Not for this client")));
    EXPECT_THAT(partner("appliances"), HasSubstr("Caution"));
    EXPECT_THAT(partner("contents"), Not(HasSubstr("Easy reach")));
    EXPECT_THAT(partner("reading"), HasSubstr("Distance from eyes to paper"));
    EXPECT_THAT(partner("reading"), Not(HasSubstr("Line 1")));
    EXPECT_THAT(partner("reading"), Not(HasSubstr("logMAR")));
    EXPECT_THAT(partner("legible"), Not(HasSubstr("acuity")));
}

TEST_F(Practice, partnerViewNamesMedicinesWithConsentOnly) {
    open("Nora");
    shell.togglePartner();
    const auto tablets = [&](bool consent) {
        ASSERT_TRUE(shell.session().edit("tablets", "test", [consent](model::Case &r) {
            r.household.sharingConsent = consent;
            r.things.front().name = "white tablets";
            r.things.front().medicine = true;
        }));
        shell.goTo(QStringLiteral("place:") + text(shell.session().record().things.front().place->text));
    };
    tablets(false);
    ASSERT_EQ(shell.page(), "contents");
    EXPECT_THAT(shell.partnerLines().join('\n').toStdString(), Not(HasSubstr("white tablets")));
    EXPECT_GT(shell.partnerLines().size(), 2) << "the other things of the shelf";
    tablets(true);
    EXPECT_THAT(shell.partnerLines().join('\n').toStdString(), HasSubstr("white tablets"));
}

TEST_F(Practice, partnerViewNamesNobodyWhoLivesOrHelpsThere) {
    open("Nora");
    shell.togglePartner();
    ASSERT_TRUE(shell.session().edit("names", "test", [](model::Case &r) {
        r.household.people = "Lives with her son Ambrose, 34";
        r.household.whoShops = "Neighbour, Mrs Quillfeather, on Fridays";
        r.places[0].name = "Ambrose's shelf";
        r.places[1].name = "shelf for the son and for Mrs Quillfeather";
    }));
    const std::string shown = partner("kitchen");
    EXPECT_THAT(shown, HasSubstr("somebody's shelf"));
    EXPECT_THAT(shown, HasSubstr("shelf for the son and for Mrs somebody"));
    EXPECT_THAT(shown, Not(HasSubstr("Ambrose")));
    EXPECT_THAT(shown, Not(HasSubstr("Quillfeather")));
}

TEST_F(Practice, partnerViewClosesWithTheLock) {
    open("Nora");
    shell.togglePartner();
    shell.lock();
    EXPECT_FALSE(shell.isPartnerShown());
    EXPECT_TRUE(shell.partnerLines().isEmpty());
}

TEST_F(Practice, whereAmISaysWhatIsLeftOfTheVisit) {
    open("Nora");
    const auto begin = [&](int minutesAgo, int planned) {
        ASSERT_TRUE(shell.session().edit("visit", "test", [&](model::Case &r) {
            for (auto &visit : r.visits)
                visit.closed = true;
            model::Visit visit;
            visit.id = model::newId();
            visit.number = 9;
            visit.date = model::today();
            visit.startMinute = QTime::currentTime().msecsSinceStartOfDay() / 60'000 - minutesAgo;
            visit.plannedMinutes = planned;
            r.visits.push_back(visit);
        }));
    };
    begin(20, 75);
    EXPECT_THAT(shell.whereAmI({}).toStdString(),
                ::testing::ContainsRegex("Visit 9. 5[45] of 75 minutes left."));
    begin(80, 75);
    EXPECT_THAT(shell.whereAmI({}).toStdString(),
                ::testing::ContainsRegex("[56] minutes over the planned 75."));
    ASSERT_TRUE(shell.session().edit("yesterday", "test", [](model::Case &r) {
        r.visits.back().date = model::addDays(model::today(), -1);
    }));
    EXPECT_THAT(shell.whereAmI({}).toStdString(), Not(HasSubstr("minutes")));
}

} // namespace
} // namespace app
