#include "model/codec.h"
#include "model/codec_archive.h"
#include <algorithm>
#include <map>

namespace model {
namespace {

using codec::fromJson;
using codec::Json;
using codec::toJson;

/// Calls `visit(kind, part)` for every part of a case, single ones and lists alike; the one list of kinds.
template<class C, class Visit> void eachKind(C &record, Visit visit) {
    visit("client", record.client);
    visit("safety", record.safety);
    visit("household", record.household);
    visit("diet", record.diet);
    visit("measurement", record.measurements);
    visit("kit-mark", record.kit);
    visit("touch-test", record.touchTests);
    visit("unit", record.units);
    visit("place", record.places);
    visit("thing", record.things);
    visit("appliance", record.appliances);
    visit("overrule", record.overrules);
    visit("plan-wishes", record.wishes);
    visit("plan", record.plan);
    visit("goal", record.goals);
    visit("rating", record.ratings);
    visit("visit", record.visits);
}

class Collector {
public:
    explicit Collector(std::vector<Record> &records) : m_records(records) {}
    template<class T> void operator()(const char *kind, const T &part) const {
        add(kind, part, std::nullopt);
    }
    template<class T> void operator()(const char *kind, const std::vector<T> &list) const {
        for (std::size_t i = 0; i < list.size(); ++i)
            add(kind, list[i], i);
    }
    template<class T> void operator()(const char *kind, const std::optional<T> &part) const {
        if (part)
            add(kind, *part, std::nullopt);
    }

private:
    template<class T> void add(const char *kind, const T &part, std::optional<std::size_t> index) const {
        Json json = toJson(part);
        if (index)
            json["#"] = *index; // where it stands in its list
        m_records.push_back({part.id, kind, json.dump(-1, ' ', false, Json::error_handler_t::replace)});
    }
    std::vector<Record> &m_records;
};

struct Body {
    Id id;
    Json json;
};

class Placer {
public:
    explicit Placer(std::map<std::string, std::vector<Body>> &bodies) : m_bodies(bodies) {}
    template<class T> void operator()(const char *kind, T &part) const {
        const auto found = m_bodies.find(kind);
        if (found == m_bodies.end() || found->second.size() != 1)
            codec::bad(std::string("not one record of kind ") + kind);
        read(found->second.front(), part);
        m_bodies.erase(found);
    }
    template<class T> void operator()(const char *kind, std::vector<T> &list) const {
        const auto found = m_bodies.find(kind);
        if (found == m_bodies.end())
            return;
        auto &bodies = found->second;
        std::vector<std::pair<int, Body *>> order;
        for (auto &body : bodies) {
            order.emplace_back(body.json.value("#", 0), &body);
            body.json.erase("#");
        }
        std::stable_sort(order.begin(), order.end(), [](const auto &a, const auto &b) {
            return std::tie(a.first, a.second->id) < std::tie(b.first, b.second->id);
        });
        for (const auto &[index, body] : order)
            read(*body, list.emplace_back());
        m_bodies.erase(found);
    }
    template<class T> void operator()(const char *kind, std::optional<T> &part) const {
        if (m_bodies.contains(kind))
            (*this)(kind, part.emplace());
    }

private:
    template<class T> static void read(const Body &body, T &part) {
        fromJson(body.json, part);
        part.id = body.id;
    }
    std::map<std::string, std::vector<Body>> &m_bodies;
};

} // namespace

std::vector<Record> toRecords(const Case &record) {
    std::vector<Record> records;
    eachKind(record, Collector(records));
    return records;
}

Result<Case> fromRecords(const std::vector<Record> &records) {
    try {
        std::map<std::string, std::vector<Body>> bodies;
        for (const auto &record : records)
            bodies[record.kind].push_back({record.id, Json::parse(record.body)});
        Case whole;
        eachKind(whole, Placer(bodies));
        if (!bodies.empty())
            codec::bad("unknown kind");
        return whole;
    } catch (const std::exception &) { // what() may hold a client's words, so it is not passed on
        return fail(ErrorCode::DamagedDatabase, "A record of this client cannot be read. Restore a backup, "
                                                "or open it with the version that wrote it.");
    }
}

RecordChanges recordChanges(const Case &before, const Case &after) {
    std::map<Id, Record> old;
    for (auto &record : toRecords(before))
        old.emplace(record.id, std::move(record));
    RecordChanges changes;
    for (auto &record : toRecords(after)) {
        const auto found = old.find(record.id);
        const bool same = found != old.end() && found->second == record;
        if (found != old.end())
            old.erase(found);
        if (!same)
            changes.written.push_back(std::move(record));
    }
    for (auto &[id, record] : old)
        changes.removed.push_back(std::move(record));
    return changes;
}

} // namespace model
