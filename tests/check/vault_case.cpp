/// vault_case: makes, fills, re-keys and checks a store of invented clients, for crash tests from outside.
#include "model/platform.h"
#include "model/store.h"
#include "model/store_options.h"
#include <algorithm>
#include <charconv>
#include <chrono>
#include <fstream>
#include <iostream>
#include <set>
#include <thread>

namespace {

constexpr auto usualPassphrase = "correct horse battery staple eight";
constexpr auto otherPassphrase = "sixteen quiet lanterns on the jetty";
constexpr auto author = "vault_case";
constexpr int visitsPerClient = 19;
constexpr auto pace =
    std::chrono::milliseconds(4); // a store that grows faster soon opens too slowly for short rounds
constexpr int done = 0;
constexpr int no = 1;
constexpr int badInput = 2;

constexpr auto usage =
    "usage: vault_case create DIR | write DIR [--journal-off] | verify DIR ACKS [--recovery CODE] | "
    "rekey DIR";

int report(const std::string &where, const model::Error &error) {
    std::cerr << "vault_case: " << where << ": " << error.sentence << '\n';
    switch (error.code) {
    case model::ErrorCode::NotUnderstood:
    case model::ErrorCode::OutOfRange:
    case model::ErrorCode::Missing:
    case model::ErrorCode::Refused:
    case model::ErrorCode::WrongSecret:
    case model::ErrorCode::WeakSecret:
    case model::ErrorCode::NewerVersion:
    case model::ErrorCode::Busy:
    case model::ErrorCode::ReadOnly:
        return badInput;
    case model::ErrorCode::Infeasible:
    case model::ErrorCode::DamagedKeyFile:
    case model::ErrorCode::DamagedDatabase:
    case model::ErrorCode::NotEncrypted:
    case model::ErrorCode::Full:
    case model::ErrorCode::InputOutput:
    case model::ErrorCode::Changed:
        return no;
    }
    return no;
}

/// Opens with the one passphrase or the other: after a killed `rekey` either may be in force.
model::Result<model::Store> openEither(const std::string &folder, const model::StoreOptions &options) {
    const auto cost = model::KeyCost::cheapest();
    auto store = model::Store::open(folder, usualPassphrase, author, cost, options);
    if (!store && store.error().code == model::ErrorCode::WrongSecret)
        return model::Store::open(folder, otherPassphrase, author, cost, options);
    return store;
}

/// The number at the start of a text; 0 if there is none.
long numberIn(const std::string &text) {
    long number = 0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

/// Every number that was saved: one a client, one a visit.
model::Result<std::set<long>> numbersIn(const model::Store &store,
                                        const std::vector<model::ClientSummary> &clients) {
    std::set<long> numbers;
    for (const auto &client : clients) {
        numbers.insert(numberIn(client.code));
        const auto record = store.load(client.id);
        if (!record)
            return tl::unexpected(record.error());
        for (const auto &visit : record->visits)
            numbers.insert(numberIn(visit.note));
    }
    return numbers;
}

model::Case inventedClient(long number) {
    auto record = model::newCase("Invented Person " + std::to_string(number), std::to_string(number));
    record.client.invented = true;
    record.client.question = "Made up for a test of the store; no such person exists.";
    return record;
}

void addVisit(model::Case &record, long number) {
    model::Visit visit;
    visit.id = model::newId();
    visit.number = static_cast<int>(record.visits.size()) + 1;
    visit.note = std::to_string(number) +
                 " is the number of this made-up visit. Tins sorted, oats moved to the middle "
                 "shelf, two marks put on; the kettle is open for next time.";
    record.visits.push_back(visit);
    for (auto &each : record.visits)
        each.carriedOver = "Open after visit " + std::to_string(number);
}

int create(const std::string &folder) {
    const auto made = model::Store::create(folder, usualPassphrase, author, model::KeyCost::cheapest());
    if (!made)
        return report(folder, made.error());
    std::cout << "recovery " << made->recoveryCode << std::endl;
    return done;
}

/// The case that was saved last, or none in an empty store.
model::Result<model::Case> lastCase(const model::Store &store) {
    const auto clients = store.caseload();
    if (!clients)
        return tl::unexpected(clients.error());
    const auto byNumber = [](const model::ClientSummary &client) { return numberIn(client.code); };
    const auto last = std::ranges::max_element(*clients, {}, byNumber);
    if (last == clients->end())
        return model::Case{};
    return store.load(last->id);
}

int write(const std::string &folder, const model::StoreOptions &options) {
    auto store = openEither(folder, options);
    if (!store)
        return report(folder, store.error());
    auto before = lastCase(*store);
    if (!before)
        return report(folder, before.error());
    long number =
        before->visits.empty() ? numberIn(before->client.code) : numberIn(before->visits.back().note);
    auto next = std::chrono::steady_clock::now();
    while (true) {
        ++number;
        const bool fresh = before->client.id.empty() || before->visits.size() >= visitsPerClient;
        auto after = fresh ? inventedClient(number) : *before;
        if (!fresh)
            addVisit(after, number);
        const model::Action action{
            .author = author, .visit = {}, .what = fresh ? "client.made" : "visit.made"};
        const auto saved = store->save(fresh ? model::Case{} : *before, after, action);
        if (!saved)
            return report(folder, saved.error());
        std::cout << "ack " << number << std::endl;
        before = std::move(after);
        next = std::max(next + pace, std::chrono::steady_clock::now());
        std::this_thread::sleep_until(next);
    }
}

/// Numbers after "ack"; a line cut off by the end of the file was not said. No value: another kind of file.
std::optional<std::set<long>> acknowledged(std::istream &file) {
    std::set<long> numbers;
    std::string line;
    while (std::getline(file, line) && !file.eof()) {
        if (!line.starts_with("ack "))
            return std::nullopt;
        const auto number = numberIn(line.substr(4));
        if (number > 0)
            numbers.insert(number);
        else if (line != "ack old" && line != "ack new")
            return std::nullopt;
    }
    return numbers;
}

model::Result<std::set<long>> soundNumbers(const model::Store &store) {
    return store.verify().and_then([&] { return store.caseload(); }).and_then([&](const auto &clients) {
        return numbersIn(store, clients);
    });
}

int verify(const std::string &folder, const std::string &acks, const std::string &recoveryCode) {
    std::ifstream file(acks);
    const auto expected = file ? acknowledged(file) : std::nullopt;
    if (!expected) {
        std::cerr << "vault_case: " << acks << ": not a file of lines \"ack N\"\n";
        return badInput;
    }
    if (!recoveryCode.empty()) {
        const auto opened = model::Store::open(folder, recoveryCode, author, model::KeyCost::cheapest());
        if (!opened)
            return report(folder + ": recovery code", opened.error());
    }
    const auto store = openEither(folder, {});
    if (!store)
        return report(folder, store.error());
    const auto found = soundNumbers(*store);
    if (!found)
        return report(folder, found.error());
    for (const auto number : *expected) {
        if (!found->contains(number)) {
            std::cerr << "vault_case: " << folder << ": ack " << number << " was given but is not there\n";
            return no;
        }
    }
    std::cout << "sound " << found->size() << " rows" << std::endl;
    return done;
}

int rekey(const std::string &folder) {
    const auto cost = model::KeyCost::cheapest();
    auto store = openEither(folder, {});
    if (!store)
        return report(folder, store.error());
    for (bool toOther = true;; toOther = !toOther) {
        const auto changed = store->changePassphrase(toOther ? otherPassphrase : usualPassphrase, cost);
        if (!changed)
            return report(folder, changed.error());
        std::cout << (toOther ? "ack new" : "ack old") << std::endl;
    }
}

} // namespace

int main(int count, char **values) {
    model::platform::protectProcess();
    const std::vector<std::string> words(values + 1, values + count);
    const auto is = [&](std::size_t size, const char *command) {
        return words.size() == size && words[0] == command;
    };
    if (is(2, "create"))
        return create(words[1]);
    if (is(2, "write"))
        return write(words[1], {});
    if (is(3, "write") && words[2] == "--journal-off")
        return write(words[1], {.journalOff = true});
    if (is(3, "verify"))
        return verify(words[1], words[2], {});
    if (is(5, "verify") && words[3] == "--recovery")
        return verify(words[1], words[2], words[4]);
    if (is(2, "rekey"))
        return rekey(words[1]);
    std::cerr << usage << '\n';
    return badInput;
}
