#include "app/pages/client_page.h"
#include "app/pages/plan_page.h"
#include "app/session.h"
#include "app/viewmodels/partner_lines.h"
#include <QTemporaryDir>
#include <QTest>
#include <gmock/gmock.h>

namespace app {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

constexpr int longEnough = 120'000; // ms
const std::string passphrase = "five words that stand together";

model::Id idOf(const Session &session, const std::string &name) {
    const auto clients = session.caseload();
    for (const auto &client : *clients)
        if (client.name.find(name) != std::string::npos)
            return client.id;
    return {};
}

std::vector<std::string> told(PageViewModel &page) {
    std::vector<std::string> all;
    for (const auto &row : page.findings()->rows())
        all.push_back(row.answer.toStdString());
    return all;
}

FormField field(PageViewModel &page, const QString &key) {
    for (const auto &row : page.form()->rows())
        if (row.key == key)
            return row;
    return {};
}

void give(model::Case &record, const std::string &unit, const std::vector<std::string> &things) {
    model::Unit cupboard;
    cupboard.id = model::newId();
    cupboard.name = unit;
    record.units = {cupboard};
    for (const char *name : {"top shelf", "middle shelf", "bottom shelf"}) {
        model::Place shelf;
        shelf.id = model::newId();
        shelf.unit = cupboard.id;
        shelf.name = name;
        shelf.order = static_cast<int>(record.places.size());
        record.places.push_back(shelf);
    }
    for (const auto &name : things) {
        record.things.push_back(model::parseContents(name)->front().thing);
        record.things.back().id = model::newId();
        record.things.back().place = record.places.front().id;
    }
}

/// Two invented clients of an encrypted store, the first one with a kitchen.
class SharedKitchenPages : public ::testing::Test {
protected:
    void SetUp() override {
        open(true);
        ASSERT_TRUE(session.addClient("Invented One", "I1"));
        ASSERT_TRUE(session.edit("kitchen", "test", [](model::Case &r) {
            give(r, "larder", {"rice daily", "pasta", "kidney beans", "sugar", "salt daily"});
            r.client.readsBraille = true;
        }));
        one = session.record().client.id;
        ASSERT_TRUE(session.addClient("Invented Two", "I2"));
        ASSERT_TRUE(session.edit("own", "test", [](model::Case &r) {
            give(r, "own tray", {"tea"});
            r.diet.asked = true;
            r.diet.avoids = {"gluten"};
        }));
        two = session.record().client.id;
    }
    void open(bool fresh) {
        const auto at = folder.filePath("store").toStdString();
        auto store = [&] {
            if (!fresh)
                return model::Store::open(at, passphrase, "Ada Rowan", model::KeyCost::cheapest());
            return model::Store::create(at, passphrase, "Ada Rowan", model::KeyCost::cheapest())
                .map([](model::Store::Made &&made) { return std::move(made.store); });
        }();
        ASSERT_TRUE(store);
        session.openStore(std::move(*store), "Ada Rowan");
    }
    [[nodiscard]] std::vector<std::string> names() const {
        std::vector<std::string> all;
        for (const auto &thing : session.record().things)
            all.push_back(thing.name);
        return all;
    }
    void plan() {
        PlanPage page(session, shell);
        page.refresh();
        page.act("make");
        ASSERT_TRUE(QTest::qWaitFor([&] { return session.record().plan.has_value(); }, longEnough));
    }
    QTemporaryDir folder;
    Session session;
    ShellViewModel shell;
    model::Id one, two;
};

TEST_F(SharedKitchenPages, theChoiceOnTheClientPageGivesBothTheFullerKitchen) {
    ClientPage page(session, shell);
    page.refresh();
    EXPECT_EQ(field(page, "sharesKitchen").choices,
              (QStringList{"nobody of the caseload", "Invented One, code I1"}));
    page.edit("sharesKitchen", "Invented One, code I1");
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.otherClient() != nullptr; }, longEnough));
    EXPECT_EQ(field(page, "sharesKitchen").value, "Invented One, code I1");
    EXPECT_EQ(names().size(), 5U);
    EXPECT_EQ(session.record().client.name, "Invented Two");
    ASSERT_TRUE(session.openClient(one));
    ClientPage first(session, shell);
    first.refresh();
    EXPECT_EQ(field(first, "sharesKitchen").value, "Invented Two, code I2");
}

TEST_F(SharedKitchenPages, anEditOfEitherChangesTheOneKitchenAndUndoGivesItBack) {
    ASSERT_TRUE(session.shareKitchen(one, "shared"));
    ASSERT_TRUE(session.edit("more", "test", [](model::Case &r) {
        r.things.front().name = "brown rice";
        r.client.contact = "by telephone";
    }));
    ASSERT_TRUE(session.openClient(one));
    EXPECT_THAT(names(), Contains("brown rice"));
    EXPECT_EQ(session.record().client.contact, "") << "what is of the person stays with her";
    ASSERT_TRUE(session.openClient(two));
    EXPECT_THAT(names(), Contains("brown rice"));
    ASSERT_TRUE(session.edit("less", "test", [](model::Case &r) { r.things.pop_back(); }));
    EXPECT_EQ(names().size(), 4U);
    ASSERT_TRUE(session.undo());
    EXPECT_EQ(names().size(), 5U);
    EXPECT_TRUE(session.otherClient());
}

TEST_F(SharedKitchenPages, sharingIsUndoneAndWhatTheRecordHeldBeforeComesBack) {
    EXPECT_THAT(names(), Contains("tea"));
    ASSERT_TRUE(session.shareKitchen(one, "shared"));
    EXPECT_THAT(names(), Not(Contains("tea")));
    EXPECT_EQ(session.undo(), QString("shared"));
    EXPECT_FALSE(session.otherClient());
    EXPECT_THAT(names(), Contains("tea"));
    EXPECT_EQ(session.undo(), QString("own")) << "earlier steps stay";
    ASSERT_TRUE(session.redo());
    ASSERT_TRUE(session.redo());
    EXPECT_EQ(names().size(), 5U);
    ASSERT_TRUE(session.shareKitchen({}, "alone"));
    EXPECT_THAT(names(), Contains("tea"));
    ASSERT_TRUE(session.openClient(one));
    EXPECT_EQ(names().size(), 5U) << "the keeper keeps it";
    EXPECT_FALSE(session.otherClient());
}

TEST_F(SharedKitchenPages, outlivesLockAndRestart) {
    ASSERT_TRUE(session.shareKitchen(one, "shared"));
    plan();
    const auto made = session.record().plan;
    session.close();
    open(false);
    ASSERT_TRUE(session.openClient(two));
    ASSERT_TRUE(session.otherClient());
    EXPECT_EQ(session.record().plan, made);
    ASSERT_TRUE(session.openClient(one));
    EXPECT_EQ(session.record().plan, made);
}

TEST_F(SharedKitchenPages, thePlanIsForBothAndNamesWhatClashes) {
    ASSERT_TRUE(session.shareKitchen(one, "shared"));
    plan();
    ASSERT_FALSE(session.record().plan->lines.empty());
    for (const auto &client : {one, two}) {
        ASSERT_TRUE(session.openClient(client));
        PlanPage page(session, shell);
        page.refresh();
        EXPECT_THAT(told(page), Contains(HasSubstr("Invented Two must avoid cereals containing gluten")));
        EXPECT_THAT(page.kicker().toStdString(), HasSubstr("Invented Two"));
        EXPECT_EQ(session.planRecord().diet.avoids, std::vector<std::string>{"gluten"});
    }
    ASSERT_TRUE(session.openClient(one));
    EXPECT_TRUE(session.record().diet.avoids.empty()) << "records stay apart";
}

TEST_F(SharedKitchenPages, aDecisionOnEitherPageStandsForBoth) {
    ASSERT_TRUE(session.shareKitchen(one, "shared"));
    plan();
    PlanPage page(session, shell);
    page.refresh();
    page.act("keepHere");
    ASSERT_EQ(session.record().overrules.size(), 1U);
    EXPECT_EQ(session.record().diet.avoids, std::vector<std::string>{"gluten"});
    page.edit("wording", "mine");
    EXPECT_EQ(session.record().overrules.size(), 2U);
    ASSERT_TRUE(session.openClient(one));
    EXPECT_EQ(session.record().overrules.size(), 2U);
    EXPECT_TRUE(session.record().diet.avoids.empty());
}

TEST_F(SharedKitchenPages, papersOfEachUseHerOwnShare) {
    ASSERT_TRUE(session.shareKitchen(one, "shared"));
    ASSERT_TRUE(session.edit("reads", "test", [](model::Case &r) { r.client.hasTagReader = true; }));
    ASSERT_TRUE(session.edit("hears", "test", [](model::Case &r) {
        r.safety.answers[model::SafetyQuestion::HearsSpeech] = {model::Answer::Yes, "", std::nullopt};
    }));
    plan();
    const model::Case share = session.ownShare();
    EXPECT_EQ(share.client.name, "Invented Two");
    EXPECT_EQ(share.plan->lines.size(), 5U);
    for (const auto &line : share.plan->lines)
        EXPECT_NE(line.marker, "braille") << "she reads none";
    ASSERT_TRUE(session.openClient(one));
    const model::Case other = session.ownShare();
    for (const auto &line : other.plan->lines)
        EXPECT_NE(line.marker, "spoken-tag");
}

TEST_F(SharedKitchenPages, theRecordOfTheOtherThatIsGoneGivesASentence) {
    ASSERT_TRUE(session.store()->saveSetting("shared-kitchens", "gone " + two.text + "\n"));
    ASSERT_TRUE(session.openClient(two));
    EXPECT_THAT(names(), Contains("tea"));
    ClientPage client(session, shell);
    client.refresh();
    EXPECT_THAT(field(client, "sharesKitchen").note.toStdString(), HasSubstr("cannot be opened"));
    PlanPage page(session, shell);
    page.refresh();
    EXPECT_THAT(told(page), Contains(HasSubstr("the plan is for this client alone")));
    ASSERT_TRUE(session.edit("salt", "test", [](model::Case &r) { r.things.front().name = "green tea"; }));
    ASSERT_TRUE(session.openClient(two));
    EXPECT_THAT(names(), Contains("green tea"));
    client.edit("sharesKitchen", "nobody of the caseload");
    ASSERT_TRUE(QTest::qWaitFor([&] { return session.sharingTrouble().isEmpty(); }, longEnough));
}

TEST_F(SharedKitchenPages, aThirdClientIsRefusedAndSoIsOneThatIsNotThere) {
    ASSERT_TRUE(session.shareKitchen(one, "shared"));
    ASSERT_TRUE(session.addClient("Invented Three", "I3"));
    const auto refused = session.shareKitchen(one, "shared");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, model::ErrorCode::Refused);
    EXPECT_THAT(refused.error().sentence, HasSubstr("shares a kitchen with another client already"));
    EXPECT_EQ(session.shareKitchen({"nowhere"}, "x").error().code, model::ErrorCode::Missing);
    EXPECT_EQ(session.shareKitchen(session.record().client.id, "x").error().code, model::ErrorCode::Refused);
    EXPECT_FALSE(session.otherClient());
}

TEST_F(SharedKitchenPages, otherEyesReadNeitherName) {
    ASSERT_TRUE(session.shareKitchen(one, "shared"));
    ASSERT_TRUE(session.edit("whose", "test", [](model::Case &r) {
        for (model::Place &place : r.places)
            if (place.name == "middle shelf")
                place.name = "shelf of Invented One, not of Invented Two";
    }));
    plan();
    PlanPage page(session, shell);
    page.refresh();
    const auto lines = partnerLines("plan", "Plan", page, session.record(), session.otherClient())
                           .join(QLatin1Char('\n'))
                           .toStdString();
    EXPECT_THAT(lines, Not(HasSubstr("Two")));
    EXPECT_THAT(lines, Not(HasSubstr("One ")));
    EXPECT_THAT(lines, HasSubstr("the other client"));
}

TEST(SharedKitchenInPractice, isForgottenWithThePracticeCaseload) {
    Session session;
    session.openPractice();
    ASSERT_TRUE(session.openClient(idOf(session, "Nora")));
    ASSERT_TRUE(session.shareKitchen(idOf(session, "Tilda"), "shared"));
    ASSERT_TRUE(session.otherClient());
    session.openPractice();
    ASSERT_TRUE(session.openClient(idOf(session, "Nora")));
    EXPECT_FALSE(session.otherClient());
}

} // namespace
} // namespace app
