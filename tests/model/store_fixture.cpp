#include "store_fixture.h"
#include "model/key_file.h"
#include "model/passphrase.h"
#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <fstream>
#include <pwd.h>
#include <sstream>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace fs = std::filesystem;

namespace {

constexpr int couldNotStart = 120;

int inChild(const std::function<int()> &work) {
    const pid_t child = ::fork();
    if (child == 0)
        ::_exit(work());
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
}

} // namespace

StoreTest::StoreTest() {
    // In memory where that is possible: what a disk keeps is for the crash tests to find out.
    const auto place = fs::is_directory("/dev/shm") ? fs::path("/dev/shm") : fs::temp_directory_path();
    std::string pattern = (place / ("feltmark-store-" + std::string(6, 'X'))).string();
    parent = ::mkdtemp(pattern.data());
    fs::permissions(parent, fs::perms(0755));
    folder = parent / "practice";
}

StoreTest::~StoreTest() {
    std::error_code ignored;
    fs::permissions(folder, fs::perms::owner_all, ignored);
    fs::remove_all(parent, ignored);
}

model::Store StoreTest::make() {
    auto made = model::Store::create(folder, passphrase, author, cheapest);
    if (!made)
        throw std::runtime_error(made.error().sentence);
    recoveryCode = made->recoveryCode;
    return std::move(made->store);
}

model::Result<model::Store> StoreTest::tryOpen(const std::string &secret) const {
    return model::Store::open(folder, secret, author, cheapest);
}

model::Store StoreTest::open() const {
    auto store = tryOpen(passphrase);
    if (!store)
        throw std::runtime_error(store.error().sentence);
    return std::move(*store);
}

model::Case StoreTest::makeFilled() {
    auto store = make();
    auto record = inventedCase("Wilhelmina Placeholder");
    if (const auto saved = store.save({}, record, action("client.made")); !saved)
        throw std::runtime_error(saved.error().sentence);
    return record;
}

model::Database StoreTest::raw() const {
    const auto keys = model::readKeyFile(file("records.key"));
    const auto secret = model::normalisedPassphrase(passphrase);
    const auto key = model::unsealKey(keys->databaseSalt, *keys->slot(model::SlotKind::Passphrase), *secret);
    return {file("records.db"), *key, keys->databaseSalt, model::Journal::Delete};
}

std::string StoreTest::bytesOf(const std::string &name) const {
    std::ostringstream all;
    all << std::ifstream(file(name), std::ios::binary).rdbuf();
    return all.str();
}

void StoreTest::overwrite(const std::string &name, std::size_t offset, const std::string &bytes) const {
    std::fstream stream(file(name), std::ios::binary | std::ios::in | std::ios::out);
    stream.seekp(static_cast<std::streamoff>(offset));
    stream << bytes;
}

void StoreTest::flipBit(const std::string &name, std::size_t byte) const {
    overwrite(name, byte, std::string(1, static_cast<char>(bytesOf(name).at(byte) ^ 4)));
}

std::vector<std::string> StoreTest::fileNames() const {
    std::vector<std::string> names;
    for (const auto &entry : fs::directory_iterator(folder))
        names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

model::Case inventedCase(const std::string &name) {
    auto record = model::newCase(name, "W7");
    record.client.invented = true;
    model::Visit visit;
    visit.id = model::newId();
    visit.date = model::Date{std::chrono::year{2026}, std::chrono::month{11}, std::chrono::day{20}};
    visit.note = "Oats moved beside the barley";
    record.visits.push_back(visit);
    model::Thing thing;
    thing.id = model::newId();
    thing.name = "pearl barley";
    record.things.push_back(thing);
    model::Goal goal;
    goal.id = model::newId();
    goal.sentence = "Finds the oats by herself";
    goal.review = model::Date{std::chrono::year{2027}, std::chrono::month{1}, std::chrono::day{8}};
    record.goals.push_back(goal);
    return record;
}

model::Action action(const std::string &what) {
    return {.author = "A. Tester", .visit = {}, .what = what};
}

int withSmallFiles(
    const std::function<int(const std::function<void(std::optional<std::size_t>)> &limit)> &work) {
    return inChild([&] {
        ::signal(SIGXFSZ, SIG_IGN);
        return work([](std::optional<std::size_t> bytes) {
            const rlimit limits{bytes ? *bytes : RLIM_INFINITY, RLIM_INFINITY};
            ::setrlimit(RLIMIT_FSIZE, &limits);
        });
    });
}

int asOrdinaryUser(const std::function<int()> &work) {
    return inChild([&] {
        const auto *nobody = ::getpwnam("nobody");
        if (::geteuid() == 0 &&
            (nobody == nullptr || ::setegid(nobody->pw_gid) != 0 || ::seteuid(nobody->pw_uid) != 0))
            return couldNotStart;
        return work();
    });
}

int withLittleMemory(std::size_t moreBytes, const std::function<int()> &work) {
    return inChild([&] {
        std::size_t pages = 0;
        std::ifstream("/proc/self/statm") >> pages;
        const rlim_t limit = pages * static_cast<std::size_t>(::sysconf(_SC_PAGESIZE)) + moreBytes;
        const rlimit limits{limit, limit};
        return ::setrlimit(RLIMIT_AS, &limits) == 0 ? work() : couldNotStart;
    });
}
