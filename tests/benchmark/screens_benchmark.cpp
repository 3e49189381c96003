#include "app/accessible_text.h"
#include "app/page_image_provider.h"
#include "app/viewmodels/app_shell.h"
#include "model/demo.h"
#include <QGuiApplication>
#include <QKeyEvent>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>
#include <array>
#include <benchmark/benchmark.h>
#include <map>
#include <memory>

Q_IMPORT_QML_PLUGIN(FeltmarkPlugin)

/// The window with an invented kitchen of 80 or 1,500 things, in a caseload of 500 clients: how long until a
/// page stands, and until a key has moved the focus (which is what a screen reader is told). Drawn into
/// memory.
namespace {

using namespace model;

constexpr int manyClients = 500;

class Opened {
public:
    explicit Opened(std::size_t things) : m_shell({}, {}, *m_pictures) {
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_engine.addImageProvider(QStringLiteral("page"), m_pictures); // the engine owns it
        m_shell.openPracticeAtStart();
        auto &session = m_shell.session();
        for (int i = 0; i < manyClients; ++i)
            (void)session.addClient(QStringLiteral("Invented Person %1").arg(i),
                                    QStringLiteral("P%1").arg(i));
        const auto clients = session.caseload();
        const auto idris = std::ranges::find(*clients, "DEMO-I", &ClientSummary::code);
        m_shell.goTo(QStringLiteral("open:") + QString::fromStdString(idris->id.text));
        (void)session.edit(QStringLiteral("more things"), "benchmark", [&](Case &record) {
            const auto kinds = record.things;
            for (std::size_t i = 0; record.things.size() < things; ++i) {
                Thing more = kinds[i % kinds.size()];
                more.id = {"more" + std::to_string(i)};
                record.things.push_back(std::move(more));
            }
            record.plan = Plan{};
            for (const Thing &thing : record.things) {
                PlanLine &line = record.plan->lines.emplace_back();
                line.thing = thing.id;
                line.place = record.places.front().id;
            }
        });
        m_engine.setInitialProperties(
            {{QStringLiteral("shell"), QVariant::fromValue<app::ShellViewModel *>(&m_shell)}});
        m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/Main.qml")));
        QCoreApplication::processEvents();
    }
    ~Opened() { qDeleteAll(m_engine.rootObjects()); }
    app::AppShell &shell() { return m_shell; }
    QQuickWindow *window() { return qobject_cast<QQuickWindow *>(m_engine.rootObjects().value(0)); }

    void show(const QString &page) {
        window()->requestActivate();
        m_shell.goTo(page);
        QCoreApplication::processEvents();
        benchmark::DoNotOptimize(window()->grabWindow()); // laid out and drawn
    }
    void press(Qt::Key key) {
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, key, Qt::NoModifier);
            QCoreApplication::sendEvent(window(), &event);
        }
    }

private:
    app::PageImageProvider *m_pictures = new app::PageImageProvider;
    QQmlApplicationEngine m_engine;
    app::AppShell m_shell;
};

/// One window for each size of kitchen; let go in main().
std::map<std::int64_t, std::unique_ptr<Opened>> windows;

Opened &openedWith(std::int64_t things) {
    auto &window = windows[things];
    if (!window)
        window = std::make_unique<Opened>(static_cast<std::size_t>(things));
    return *window;
}

void pageChange(benchmark::State &state, const char *page) {
    Opened &opened = openedWith(state.range(0));
    for (auto _ : state) {
        state.PauseTiming();
        opened.show(QStringLiteral("settings"));
        state.ResumeTiming();
        opened.show(QString::fromLatin1(page));
    }
}

/// Tab to the list of things, then Down and Up: until the focus is there and all that the page shows of it,
/// since before that nobody answers the screen reader.
void keyInList(benchmark::State &state, const char *page) {
    Opened &opened = openedWith(state.range(0));
    opened.show(QString::fromLatin1(page));
    const auto inList = [&] {
        const QQuickItem *item = opened.window()->activeFocusItem();
        return item && item->property("position").toString().contains(QLatin1String(" of "));
    };
    for (int tabs = 0; tabs < 60 && !inList(); ++tabs)
        opened.press(Qt::Key_Tab);
    if (!inList())
        return state.SkipWithError("no list reached");
    bool down = false;
    for (auto _ : state) {
        const QQuickItem *before = opened.window()->activeFocusItem();
        opened.press((down = !down) ? Qt::Key_Down : Qt::Key_Up);
        QCoreApplication::processEvents();
        if (opened.window()->activeFocusItem() == before)
            return state.SkipWithError("the key moved nothing");
    }
}

void goToByTyping(benchmark::State &state) {
    Opened &opened = openedWith(state.range(0));
    for (auto _ : state) {
        opened.shell().findDestinations(QStringLiteral("bea"));
        QCoreApplication::processEvents();
    }
}

constexpr std::array pages{"client", "safety", "sight", "kitchen",  "contents", "plan",
                           "goals",  "papers", "touch", "followup", "progress"};

void addBenchmarks() {
    for (const char *page : pages)
        benchmark::RegisterBenchmark((std::string("pageChange/") + page).c_str(), pageChange, page)
            ->Arg(80)
            ->Arg(1500)
            ->Unit(benchmark::kMillisecond);
    for (const char *page : {"contents", "plan"})
        benchmark::RegisterBenchmark((std::string("keyInList/") + page).c_str(), keyInList, page)
            ->Arg(80)
            ->Arg(1500)
            ->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark("goToByTyping", goToByTyping)
        ->Arg(80)
        ->Arg(1500)
        ->Unit(benchmark::kMillisecond);
    // Last: it closes the client.
    benchmark::RegisterBenchmark("pageChange/caseload", pageChange, "caseload")
        ->Arg(80)
        ->Unit(benchmark::kMillisecond);
}

} // namespace

int main(int argc, char **argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication application(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    app::installTextAccessible();
    benchmark::Initialize(&argc, argv);
    addBenchmarks();
    benchmark::RunSpecifiedBenchmarks();
    windows.clear();
}
