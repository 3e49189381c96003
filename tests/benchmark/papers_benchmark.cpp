#include "model/demo.h"
#include "model/planning.h"
#include "reports/papers.h"
#include <benchmark/benchmark.h>

/// Plan and papers of the three invented clients: 25, 80 and 40 things.
namespace {

using namespace model;
using reports::Document;
using reports::Result;

constexpr Date today{std::chrono::year{2026}, std::chrono::November, std::chrono::day{25}};

Case client(const benchmark::State &state) {
    return demo::all().at(static_cast<std::size_t>(state.range(0)));
}

void demoPlan(benchmark::State &state) {
    const Case record = client(state);
    const Findings findings = findingsOf(record, today);
    for (auto _ : state)
        if (!makePlan(record, findings, SolveOptions{}, today))
            return state.SkipWithError("no plan");
    state.SetLabel(std::to_string(record.things.size()) + " things");
}
BENCHMARK(demoPlan)->DenseRange(0, 2)->Unit(benchmark::kMillisecond)->UseRealTime();

/// The handout of a client with a plan, written in one format.
template<class Write> void handout(benchmark::State &state, Write write) {
    Case record = client(state);
    const Findings findings = findingsOf(record, today);
    auto plan = makePlan(record, findings, SolveOptions{}, today);
    if (!plan)
        return state.SkipWithError("no plan");
    record.plan = std::move(*plan);
    const auto document = reports::handout(record, findings, today);
    if (!document)
        return state.SkipWithError(document.error().sentence.c_str());
    for (auto _ : state)
        if (const Result<std::string> written = write(*document); !written)
            return state.SkipWithError(written.error().sentence.c_str());
    state.SetLabel(std::to_string(record.things.size()) + " things");
}

void everyPaper(benchmark::State &state) {
    Case record = client(state);
    const Findings findings = findingsOf(record, today);
    auto plan = makePlan(record, findings, SolveOptions{}, today);
    if (!plan)
        return state.SkipWithError("no plan");
    record.plan = std::move(*plan);
    PaperMedia &media = record.client.media;
    media.largePrint = media.web = media.plainText = true;
    media.braille = BrailleGrade::Contracted;
    std::size_t count = 0;
    for (auto _ : state) {
        const auto papers = reports::papers(record, findings, today, {});
        if (!papers)
            return state.SkipWithError(papers.error().sentence.c_str());
        count = papers->size();
    }
    state.SetLabel(std::to_string(count) + " papers");
}

BENCHMARK_CAPTURE(handout, pdf, [](const Document &document) { return reports::writePdf(document, {}); })
    ->DenseRange(0, 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(handout, brf, [](const Document &document) { return reports::writeBrf(document, {}); })
    ->DenseRange(0, 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(handout, pef, [](const Document &document) { return reports::writePef(document, {}); })
    ->DenseRange(0, 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(handout, unicodeBraille,
                  [](const Document &document) { return reports::writeUnicodeBraille(document, {}); })
    ->DenseRange(0, 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(handout, html, [](const Document &document) { return reports::writeHtml(document); })
    ->DenseRange(0, 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(handout, text, [](const Document &document) { return reports::writeText(document); })
    ->DenseRange(0, 2)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(everyPaper)->DenseRange(0, 2)->Unit(benchmark::kMillisecond);

} // namespace
