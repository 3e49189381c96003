#include "tests/model/visit_clients.h"
#include "model/demo.h"
#include "model/kit.h"
#include "model/planning.h"
#include "model/supplies.h"
#include "model/together.h"
#include "model/work_order.h"
#include <algorithm>
#include <iostream>

/// The plans of the invented clients as text, to be read as a therapist would: places, marks, cautions,
/// supplies, work and upkeep.
namespace {

using namespace model;

std::string lineWords(const Case &record, const PlanLine &line) {
    const auto thing = std::ranges::find(record.things, line.thing, &Thing::id);
    const Marker *marker = markerIn(record, line.marker);
    std::string words = thing->name;
    if (thing->count.value_or(1) > 1)
        words += " x" + std::to_string(*thing->count);
    if (marker != nullptr)
        words += " [" + marker->name +
                 (marker->medium == MarkMedium::Touch ? std::string() : " \"" + line.labelText + "\"") + "]";
    for (const auto &meaning : line.meanings)
        words += " {" + meaning + "}";
    return words;
}

void printPlaces(const Case &record) {
    for (const Place &place : record.places) {
        std::vector<const PlanLine *> here;
        for (const PlanLine &line : record.plan->lines)
            if (line.place == place.id)
                here.push_back(&line);
        std::ranges::sort(here, {}, &PlanLine::order);
        std::cout << placeWords(record, place.id) << ":\n";
        for (const PlanLine *line : here)
            std::cout << "    " << lineWords(record, *line) << '\n';
    }
}

void printWork(const Case &record, const Findings &findings, Date on) {
    std::cout << "Supplies\n";
    for (const Supply &supply : supplies(record, findings))
        std::cout << "    " << supply.count << ' ' << supply.name << ", " << priceInWords(supply.cost, record)
                  << '\n';
    for (const BannedMaterial &banned : bannedMaterials(record, findings))
        std::cout << "    not " << banned.material << " (" << banned.because << "); instead "
                  << banned.instead << '\n';
    std::cout << "Work\n";
    for (const WorkStep &step : workOrder(record, findings, on)) {
        std::cout << "    " << step.minutes << " min, " << doerInWords(step.who) << ": " << step.step << '\n';
        for (const std::string &one : step.first)
            std::cout << "        " << one << '\n';
        for (const std::string &more : {step.help, step.pause})
            if (!more.empty())
                std::cout << "        " << more << '\n';
    }
    std::cout << "Upkeep\n";
    for (const UpkeepTask &task : upkeepTasks(record, on))
        std::cout << "    " << task.when << (task.due ? ", " + isoDate(*task.due) : "") << ", "
                  << doerInWords(task.who) << ": " << task.task << '\n';
}

void print(Case record, const Findings &findings, Date on) {
    for (const Caution &caution : findings.cautions)
        std::cout << "! " << (caution.urgent ? "URGENT " : "") << caution.sentence << '\n';
    std::cout << "Print " << findings.paperSize.value << " point\n";
    const auto plan = makePlan(record, findings, SolveOptions{}, on);
    if (!plan || plan->lines.empty()) {
        std::cout << (plan ? plan->shortages.front().sentence : plan.error().sentence) << "\n\n";
        return;
    }
    record.plan = *plan;
    for (const MeaningMark &mark : record.plan->meaningMarks)
        std::cout << "Mark for " << mark.meaning << ": " << markerIn(record, mark.marker)->name << '\n';
    printPlaces(record);
    printWork(record, findings, on);
    std::cout << '\n';
}

void print(const Case &record, Date on) {
    std::cout << "# " << record.client.name << " (invented)\n\n";
    print(record, findingsOf(record, on), on);
}

/// One plan for both.
void print(const Case &keeper, const Case &partner, Date on) {
    std::cout << "# " << keeper.client.name << " and " << partner.client.name << " (invented)\n\n";
    const Together both = together(keeper, partner, on);
    for (const std::string &clash : both.clashes)
        std::cout << "? " << clash << '\n';
    print(both.record, both.findings, on);
}

} // namespace

int main(int argc, char **argv) {
    const std::string which = argc > 1 ? argv[1] : "all";
    const auto on = parseDate(argc > 2 ? argv[2] : "2026-11-25");
    if (argc > 3 || !on || (which != "all" && which != "five" && which != "demo")) {
        std::cerr << "visit_clients [five|demo|all] [DATE]\n";
        return 2;
    }
    if (which != "demo") {
        const std::vector<Case> clients = fixtures::visitClients();
        for (auto record = clients.begin(); record != clients.end() - 2; ++record)
            print(*record, *on);
        print(clients.at(clients.size() - 2), clients.back(), *on);
    }
    if (which != "five")
        for (const Case &record : demo::all())
            print(record, *on);
    return 0;
}
