#pragma once
#include "app/page_image_provider.h"
#include "app/viewmodels/app_shell.h"
#include "layout_faults.h"
#include <QDir>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <gmock/gmock.h>

/// The real screens in a window without a screen; the parameter is the size of the text.
class RealScreens : public testing::TestWithParam<double> {
protected:
    explicit RealScreens(const std::filesystem::path &store = {})
        : m_pictures(new app::PageImageProvider), m_shell(store, model::KeyCost::cheapest(), *m_pictures) {
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_engine.addImageProvider(QStringLiteral("page"), m_pictures); // the engine owns it
        if (store.empty())
            m_shell.openPracticeAtStart();
        m_engine.setInitialProperties(
            {{QStringLiteral("shell"), QVariant::fromValue<app::ShellViewModel *>(&m_shell)}});
        m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Feltmark/screens/Main.qml")));
        window()->resize(1280, 800);
        m_shell.setTextScale(GetParam());
    }
    /// A page of papers gives back its pictures while the engine still has them.
    ~RealScreens() override {
        m_shell.goTo(QStringLiteral("caseload"));
        EXPECT_TRUE(layout::settle(window()->contentItem()));
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        window()->grabWindow(); // the frame that frees their textures
    }
    QQuickWindow *window() { return qobject_cast<QQuickWindow *>(m_engine.rootObjects().value(0)); }

    void openPage(const QString &page) {
        m_shell.goTo(page);
        ASSERT_EQ(m_shell.page(), page);
    }
    /// The page as it stands, under this name.
    void expectNoFaults(const QString &state) {
        QQuickItem *root = window()->contentItem();
        EXPECT_TRUE(layout::settle(root)) << state.toStdString() << ": the layout never comes to rest";
        const QStringList faults = layout::faultsUnder(root);
        EXPECT_TRUE(faults.isEmpty()) << state.toStdString() << ":\n" << faults.join(u'\n').toStdString();
        takePictures(state);
    }

    /// Pictures to be looked at, into the folder that FELTMARK_SCREENSHOTS names; none without it.
    void takePictures(const QString &state) {
        const QString folder = qEnvironmentVariable("FELTMARK_SCREENSHOTS");
        if (folder.isEmpty() || !QDir().mkpath(folder))
            return;
        const QString before = m_shell.themeMode();
        const QString whose = m_shell.session().hasClient()
                                  ? QString::fromStdString(m_shell.session().record().client.code)
                                  : QStringLiteral("all");
        for (const char *theme : {"light", "dark", "contrast", "paper", "own"}) {
            m_shell.setThemeMode(QString::fromLatin1(theme));
            EXPECT_TRUE(layout::settle(window()->contentItem()));
            const QString name = QStringLiteral("%1/%2-%3-%4-%5.png")
                                     .arg(folder, state, whose, QString::fromLatin1(theme))
                                     .arg(100 * GetParam());
            EXPECT_TRUE(window()->grabWindow().save(name));
        }
        m_shell.setThemeMode(before);
    }

    app::PageImageProvider *m_pictures;
    app::AppShell m_shell;
    QQmlApplicationEngine m_engine;
};
