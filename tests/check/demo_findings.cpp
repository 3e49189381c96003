#include "model/demo.h"
#include "model/findings.h"
#include "model/legible.h"
#include "model/planning.h"
#include "model/shelf_reach.h"
#include <iostream>

/// The findings of the invented clients as text, each line with its source; then each shelf and each label.
namespace {

using namespace model;

const char *wordsOfSureness(Sureness sureness) {
    switch (sureness) {
    case Sureness::Measured:
        return "measured";
    case Sureness::Estimated:
        return "estimated";
    case Sureness::NotMeasured:
        return "not measured";
    }
    return "";
}

const char *wordsOfDomain(Domain domain) {
    switch (domain) {
    case Domain::Sight:
        return "Sight";
    case Domain::Touch:
        return "Touch";
    case Domain::Reach:
        return "Reach";
    }
    return "";
}

void print(const Case &record, Date on) {
    const Findings findings = findingsOf(record, on);
    std::cout << "# " << record.client.name << " (invented), " << isoDate(on) << "\n\n";
    for (const Finding &finding : findings.all)
        std::cout << wordsOfDomain(finding.domain) << ": " << finding.topic << ": " << finding.answer << " ["
                  << wordsOfSureness(finding.sureness) << "] " << finding.because
                  << " Source: " << finding.source << ".\n";
    std::cout << "\nShelves\n";
    for (const ShelfReach &shelf : shelfReaches(record, findings))
        std::cout << placeWords(record, shelf.place) << ": " << wordsOf(shelf.ease) << ". " << shelf.because
                  << '\n';
    std::cout << "\nLabels\n";
    for (const LabelRow &label : legibleHere(record, findings))
        std::cout << label.words << ", " << placeWords(record, label.place) << ": " << wordsOf(label.verdict)
                  << ". " << label.because << '\n';
    std::cout << '\n';
}

} // namespace

int main(int argc, char **argv) {
    const std::string name = argc > 1 ? argv[1] : "all";
    const auto on = parseDate(argc > 2 ? argv[2] : "2026-11-25");
    const auto one = demo::byName(name);
    if (argc > 3 || !on || (name != "all" && !one)) {
        std::cerr << "demo_findings [nora|idris|tilda|all] [DATE]\n";
        return 2;
    }
    if (one)
        print(*one, *on);
    else
        for (const Case &record : demo::all())
            print(record, *on);
    return 0;
}
