#include "app/window.h"
#include "app/accessible_text.h"
#include "app/calm_events.h"
#include "app/desktop_colours.h"
#include "app/local_words.h"
#include "app/page_image_provider.h"
#include "app/preferences.h"
#include "app/viewmodels/app_shell.h"
#include <QFont>
#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QScreen>
#include <QTranslator>
#include <iostream>

namespace app {

namespace {

void endWhenReady(const QQuickWindow &window) {
    QObject::connect(&window, &QQuickWindow::frameSwapped, &window, [&window] {
        if (!window.activeFocusItem() || window.activeFocusItem() == window.contentItem())
            return;
        std::cout << "ready" << std::endl;
        QCoreApplication::quit();
    });
}

/// In the language that was chosen; at the first start in the desktop's.
std::unique_ptr<QTranslator> speakAsKept(const Preferences &preferences) {
    const QString kept = preferences.value(QStringLiteral("language"));
    const QString language = languageOf(kept.isEmpty() ? QLocale::system().name() : kept);
    useAmericanWords(language == QLatin1String("en_US"));
    auto translator = translatorFor(language);
    if (translator)
        QCoreApplication::installTranslator(translator.get());
    translateModel(translator != nullptr);
    return translator;
}

/// As it was chosen; what was not, as the desktop is, its colours also when they change later.
void applyPreferences(Preferences &preferences, AppShell &shell) {
    SettingsViewModel &settings = shell.settings();
    const double scale =
        textScaleOf(QGuiApplication::font(), QGuiApplication::primaryScreen()->logicalDotsPerInch());
    settings.setDesktop(themeOf(QGuiApplication::palette()), scale);
    QObject::connect(new DesktopColours(&settings), &DesktopColours::changed, &settings,
                     [&settings, scale](const QString &theme) { settings.setDesktop(theme, scale); });
    if (preferences.value(QStringLiteral("language")).isEmpty())
        settings.showLanguage(languageOf(QLocale::system().name()));
    settings.restore([&preferences](const QString &name) { return preferences.value(name); });
    QObject::connect(
        &settings, &SettingsViewModel::kept, &settings,
        [&preferences](const QString &name, const QString &value) { preferences.keep(name, value); });
}

/// Texts ask for the usual font before their own: here it is that of Theme.qml, which is loaded anyway.
void useFontOfTheText(double scale) {
    QFont body(QStringLiteral("Noto Sans"));
    body.setPixelSize(qRound(18 * scale));
    QGuiApplication::setFont(body);
}

/// The size that was kept, else the usual one; with its frame it must find room on the screen.
QSize fitting(const QSize &kept) {
    constexpr QSize usual(1280, 800), frame(8, 48);
    return (kept.isValid() ? kept : usual)
        .boundedTo(QGuiApplication::primaryScreen()->availableSize() - frame);
}

} // namespace

int runWindow(int argc, char **argv, const WindowStart &start) {
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("feltmark"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Feltmark"));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.feltmark.Feltmark"));
    installTextAccessible();
    installCalmEvents();
    Preferences preferences;
    const auto translator = speakAsKept(preferences);
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    auto *pictures = new PageImageProvider; // the engine owns it
    engine.addImageProvider(QStringLiteral("page"), pictures);
    AppShell shell(start.store, model::KeyCost{}, *pictures);
    if (start.demo)
        shell.openPracticeAtStart();
    applyPreferences(preferences, shell);
    useFontOfTheText(shell.textScale());
    QVariantMap properties{
        {QStringLiteral("shell"), QVariant::fromValue(static_cast<ShellViewModel *>(&shell))}};
    const QSize size = fitting(preferences.windowSize());
    properties[QStringLiteral("width")] = size.width();
    properties[QStringLiteral("height")] = size.height();
    engine.setInitialProperties(properties);
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/Main.qml")));
    if (engine.rootObjects().isEmpty()) {
        std::cerr << "feltmark: The window cannot be shown on this display.\n";
        return 1;
    }
    const auto *window = qobject_cast<QQuickWindow *>(engine.rootObjects().constFirst());
    if (start.timed)
        endWhenReady(*window);
    const int status = QGuiApplication::exec();
    if (!start.timed && window->visibility() == QWindow::Windowed)
        preferences.keepWindowSize(window->size());
    shell.lock();
    qDeleteAll(engine.rootObjects()); // before the shell that they show
    return status;
}

} // namespace app
