#include "tests/model/found.h"
#include "tests/model/fixtures.h"
#include <algorithm>

namespace model::fixtures {

Finding about(const Findings &findings, const std::string &topic) {
    for (const Finding &finding : findings.all)
        if (finding.topic.compare(0, topic.size(), topic) == 0)
            return finding;
    ADD_FAILURE() << "no finding about " << topic;
    return {};
}

bool mentions(const Findings &findings, const std::string &topic) {
    return std::any_of(findings.all.begin(), findings.all.end(),
                       [&](const Finding &f) { return f.topic.compare(0, topic.size(), topic) == 0; });
}

Caution cautionWith(const Findings &findings, const std::string &words) {
    for (const Caution &caution : findings.cautions)
        if (caution.sentence.find(words) != std::string::npos)
            return caution;
    ADD_FAILURE() << "no caution with: " << words;
    return {};
}

bool cautions(const Findings &findings, const std::string &words) {
    return std::any_of(findings.cautions.begin(), findings.cautions.end(), [&](const Caution &caution) {
        return caution.sentence.find(words) != std::string::npos;
    });
}

Findings with(std::vector<Measurement> measurements) {
    Case record = unworried("Invented", "I0");
    record.measurements = std::move(measurements);
    return findingsOf(record, visitDay);
}

} // namespace model::fixtures
