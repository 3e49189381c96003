#include <QColor>
#include <QGuiApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <memory>

Q_IMPORT_QML_PLUGIN(FeltmarkPlugin)

namespace {

/// Relative luminance and contrast ratio: W3C, Web Content Accessibility Guidelines 2.2, section 6
/// (glossary).
double luminance(const QColor &colour) {
    const auto linear = [](double part) {
        return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor &a, const QColor &b) {
    const auto [darker, lighter] = std::minmax({luminance(a), luminance(b)});
    return (lighter + 0.05) / (darker + 0.05);
}

// Published pairs: black on white is 21:1 by definition; #767676 on white 4.54:1 and #595959 on white 7.0:1
// are the greys that W3C technique G18 and G17 material names as just enough.
TEST(Contrast, followsThePublishedFormula) {
    EXPECT_NEAR(contrast("#000000", "#ffffff"), 21.0, 1e-6);
    EXPECT_NEAR(contrast("#767676", "#ffffff"), 4.54, 0.005);
    EXPECT_NEAR(contrast("#595959", "#ffffff"), 7.0, 0.01);
}

struct Pair {
    const char *what;
    const char *on;
    double least;
};

// 7:1 for words: WCAG 2.2, success criterion 1.4.6. 4.5:1 for edges, focus and charts is stricter than
// its 1.4.11 (3:1).
const std::vector<Pair> pairs = [] {
    std::vector<Pair> all;
    for (const char *ground : {"page", "surface", "sunken", "accentSoft"}) {
        for (const char *words : {"ink", "inkSoft", "accent"})
            all.push_back({words, ground, 7});
        for (const char *line : {"edge", "focus", "now", "before", "aim"})
            all.push_back({line, ground, 4.5});
    }
    for (const char *ground : {"page", "surface", "errorSoft"})
        all.push_back({"error", ground, 7});
    for (const char *ground : {"page", "surface", "cautionSoft"})
        all.push_back({"caution", ground, 7});
    for (const char *ground : {"errorSoft", "cautionSoft"})
        all.push_back({"ink", ground, 7});
    all.push_back({"accentInk", "accent", 7});
    all.push_back({"surface", "now", 4.5}); // the number in a chart's latest point
    all.push_back({"focusHalo", "focus", 4.5});
    all.push_back({"focusHalo", "accent", 4.5});
    return all;
}();

class ThemeContrast : public testing::TestWithParam<const char *> {};

TEST_P(ThemeContrast, isEnoughForEveryPair) {
    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent component(&engine);
    component.setData("import QtQml; import Feltmark; QtObject { property QtObject theme: Theme }", QUrl());
    const std::unique_ptr<QObject> holder(component.create());
    ASSERT_NE(holder, nullptr) << component.errorString().toStdString();
    auto *theme = holder->property("theme").value<QObject *>();
    ASSERT_NE(theme, nullptr);
    theme->setProperty("mode", QString::fromLatin1(GetParam()));
    for (const Pair &pair : pairs) {
        const auto colour = theme->property(pair.what).value<QColor>(),
                   ground = theme->property(pair.on).value<QColor>();
        ASSERT_TRUE(colour.isValid() && ground.isValid()) << pair.what << " on " << pair.on;
        EXPECT_GE(contrast(colour, ground), pair.least) << pair.what << " on " << pair.on;
    }
}

INSTANTIATE_TEST_SUITE_P(Modes, ThemeContrast, testing::Values("light", "dark", "contrast", "paper", "own"));

} // namespace

int main(int argc, char **argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    testing::InitGoogleMock(&argc, argv);
    return RUN_ALL_TESTS();
}
