#include <QElapsedTimer>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTemporaryDir>
#include <benchmark/benchmark.h>

/// Start of the program: from the start of the process to the first field with the focus, beside the same of
/// an empty window with one text field. Without a display it is drawn into memory.
namespace {

/// Seconds until the program says that it is ready; none if it does not.
std::optional<double> secondsUntilReady(const QString &program, const QStringList &arguments) {
    QProcess process;
    auto environment = QProcessEnvironment::systemEnvironment();
    if (!environment.contains(QStringLiteral("DISPLAY")) &&
        !environment.contains(QStringLiteral("WAYLAND_DISPLAY")))
        environment.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("offscreen"));
    process.setProcessEnvironment(environment);
    QElapsedTimer clock;
    clock.start();
    process.start(program, arguments);
    while (process.waitForReadyRead(20'000))
        if (process.readAllStandardOutput().contains("ready")) {
            const double seconds = static_cast<double>(clock.nsecsElapsed()) / 1e9;
            process.waitForFinished();
            return seconds;
        }
    return std::nullopt;
}

void start(benchmark::State &state, const char *program, bool ownStore) {
    const QTemporaryDir folder;
    QStringList arguments{QStringLiteral("--time-start")};
    if (ownStore)
        arguments << QStringLiteral("--store") << folder.filePath(QStringLiteral("records"));
    for (auto _ : state) {
        const auto seconds = secondsUntilReady(QString::fromUtf8(program), arguments);
        if (!seconds)
            return state.SkipWithError("the window did not get ready");
        state.SetIterationTime(*seconds);
    }
}
BENCHMARK_CAPTURE(start, feltmark, FELTMARK_PROGRAM, true)->Unit(benchmark::kMillisecond)->UseManualTime();
BENCHMARK_CAPTURE(start, emptyWindow, EMPTY_WINDOW, false)->Unit(benchmark::kMillisecond)->UseManualTime();

} // namespace
