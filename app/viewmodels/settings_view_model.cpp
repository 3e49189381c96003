#include "app/viewmodels/settings_view_model.h"
#include "app/local_words.h"
#include <QScopedValueRollback>
#include <array>
#include <utility>

namespace app {
namespace {

struct Look {
    const char *mode;
    const char *words;
};
constexpr std::array looks{
    Look{"desktop", QT_TRANSLATE_NOOP("app::SettingsViewModel", "As the desktop is")},
    Look{"light", QT_TRANSLATE_NOOP("app::SettingsViewModel", "Light")},
    Look{"dark", QT_TRANSLATE_NOOP("app::SettingsViewModel", "Dark")},
    Look{"contrast", QT_TRANSLATE_NOOP("app::SettingsViewModel", "High contrast, dark")},
    Look{"paper", QT_TRANSLATE_NOOP("app::SettingsViewModel", "High contrast, light")},
    Look{"own", QT_TRANSLATE_NOOP("app::SettingsViewModel", "Own colours")}};

const QString keyPrefix = QStringLiteral("key.");
const QString asDesktop = QStringLiteral("desktop");
const QString switchedOff = QStringLiteral("off");
const QString shortSpeech = QStringLiteral("short"), fullSpeech = QStringLiteral("full");

QString minutesWords(int minutes) {
    return SettingsViewModel::tr("%1 minutes").arg(minutes);
}

QString speechWords(bool isShort) {
    return isShort ? SettingsViewModel::tr("Short: no hints")
                   : SettingsViewModel::tr("Full: hints once a page");
}

QString languageWords(const QString &language) {
    return language == QLatin1String("en_US") ? SettingsViewModel::tr("English, United States")
                                              : SettingsViewModel::tr("English, United Kingdom");
}

QString percent(double scale) {
    return SettingsViewModel::tr("%1 percent").arg(qRound(100 * scale));
}

} // namespace

SettingsViewModel::SettingsViewModel(ShellViewModel *shell)
    : QObject(shell), m_shell(shell), m_language(languages().constFirst()) {
    m_looks = looksNow();
    connect(shell, &ShellViewModel::looksChanged, this, [this] {
        keepWhatChanged();
        fill();
    });
    fill();
}

SettingsViewModel::Looks SettingsViewModel::looksNow() const {
    return {{QStringLiteral("theme"), m_shell->themeMode()},
            {QStringLiteral("textScale"), QString::number(m_shell->textScale())},
            {QStringLiteral("ownInk"), m_shell->ownInk()},
            {QStringLiteral("ownPaper"), m_shell->ownPaper()},
            {QStringLiteral("lockMinutes"), QString::number(m_shell->lockMinutes())},
            {QStringLiteral("speech"), m_shell->isShortSpeech() ? shortSpeech : fullSpeech}};
}

/// Text size and others change by keys of the shell too: that is a choice like one made here.
void SettingsViewModel::keepWhatChanged() {
    const Looks before = std::exchange(m_looks, looksNow());
    if (m_quiet)
        return;
    for (const auto &[name, value] : m_looks) {
        if (before.at(name) == value)
            continue;
        m_themeOfDesktop = m_themeOfDesktop && name != QLatin1String("theme");
        m_scaleOfDesktop = m_scaleOfDesktop && name != QLatin1String("textScale");
        emit kept(name, value);
    }
}

void SettingsViewModel::setDesktop(const QString &theme, double textScale) {
    const QScopedValueRollback quiet(m_quiet, true);
    m_desktopTheme = theme;
    m_desktopScale = textScale;
    if (m_themeOfDesktop)
        takeTheme(asDesktop);
    if (m_scaleOfDesktop)
        takeTextScale(asDesktop);
    fill();
}

void SettingsViewModel::takeTheme(const QString &value) {
    const QString mode = value == asDesktop ? m_desktopTheme : value;
    m_shell->setThemeMode(mode);
    m_themeOfDesktop = value == asDesktop || (m_themeOfDesktop && m_shell->themeMode() != mode);
}

void SettingsViewModel::takeTextScale(const QString &value) {
    const double scale = value == asDesktop ? m_desktopScale : value.toDouble();
    m_shell->setTextScale(scale);
    m_scaleOfDesktop =
        value == asDesktop || (m_scaleOfDesktop && !qFuzzyCompare(m_shell->textScale(), scale));
}

void SettingsViewModel::edit(const QString &key, const QString &value) {
    m_refusedKey.clear();
    QString taken = value;
    for (const Look &look : looks)
        if (key == QLatin1String("theme") && value == tr(look.words))
            taken = QString::fromLatin1(look.mode);
    for (const double scale : ShellViewModel::scales())
        if (key == QLatin1String("textScale") && value == percent(scale))
            taken = QString::number(scale);
    if (key == QLatin1String("textScale") && value == tr("As the desktop is"))
        taken = asDesktop;
    for (const int minutes : ShellViewModel::lockChoices())
        if (key == QLatin1String("lockMinutes") && value == minutesWords(minutes))
            taken = QString::number(minutes);
    if (key == QLatin1String("speech"))
        taken = value == speechWords(true) ? shortSpeech : fullSpeech;
    for (const QString &language : languages())
        if (key == QLatin1String("language") && value == languageWords(language))
            taken = language;
    const bool isOfDesktop = key == QLatin1String("theme") || key == QLatin1String("textScale");
    const QString why = [&] {
        const QScopedValueRollback quiet(m_quiet, isOfDesktop);
        return apply(key, taken);
    }();
    if (why.isEmpty()) {
        if (isOfDesktop)
            emit kept(key, taken);
        if (key == QLatin1String("language")) {
            emit kept(key, m_language);
            m_shell->say(tr("The language changes with the next start."));
        }
        if (key.startsWith(keyPrefix))
            emit kept(key, taken.trimmed().isEmpty() ? switchedOff : taken);
    } else {
        m_refusedKey = key;
        m_refusedValue = value;
        m_refusedWhy = why;
    }
    fill();
}

void SettingsViewModel::restore(const std::function<QString(const QString &)> &keptOf) {
    const QScopedValueRollback quiet(m_quiet, true);
    const auto keptOr = [&](const QString &name, const QString &now) {
        const QString value = keptOf(name);
        return value.isEmpty() ? now : value;
    };
    static_cast<void>(m_shell->setOwnColours(keptOr(QStringLiteral("ownInk"), m_shell->ownInk()),
                                             keptOr(QStringLiteral("ownPaper"), m_shell->ownPaper())));
    for (const QString &look :
         {QStringLiteral("theme"), QStringLiteral("textScale"), QStringLiteral("speech"),
          QStringLiteral("lockMinutes"), QStringLiteral("language")})
        if (const QString value = keptOf(look); !value.isEmpty())
            static_cast<void>(apply(look, value));
    std::vector<std::pair<QString, QString>> changed;
    for (const KeyCommand &command : m_shell->keys()->rows())
        if (const QString value = keptOf(keyPrefix + command.key); !value.isEmpty())
            changed.emplace_back(keyPrefix + command.key, value == switchedOff ? QString() : value);
    for (const auto &[key, value] : changed) // all at once, so that two commands may have changed places
        static_cast<void>(apply(key, {}));
    for (const auto &[key, value] : changed)
        static_cast<void>(apply(key, value));
    fill();
}

void SettingsViewModel::showLanguage(const QString &language) {
    m_language = languageOf(language);
    fill();
}

QString SettingsViewModel::apply(const QString &key, const QString &value) {
    if (key == QLatin1String("theme"))
        takeTheme(value);
    else if (key == QLatin1String("textScale"))
        takeTextScale(value);
    else if (key == QLatin1String("lockMinutes"))
        m_shell->setLockMinutes(value.toInt());
    else if (key == QLatin1String("language"))
        m_language = languageOf(value);
    else if (key == QLatin1String("speech"))
        m_shell->setShortSpeech(value == shortSpeech);
    else if (key == QLatin1String("ownInk"))
        return m_shell->setOwnColours(value, m_shell->ownPaper());
    else if (key == QLatin1String("ownPaper"))
        return m_shell->setOwnColours(m_shell->ownInk(), value);
    else if (key.startsWith(keyPrefix))
        return m_shell->keys()->setSequences(key.mid(keyPrefix.size()), value);
    return {};
}

FormField SettingsViewModel::keyField(const KeyCommand &command) const {
    return {.key = keyPrefix + command.key,
            .label = command.title,
            .value = command.sequences.join(QStringLiteral(", "))};
}

void SettingsViewModel::fill() {
    FormField theme{.key = QStringLiteral("theme"), .kind = FieldKind::Choice, .label = tr("Colours")};
    for (const Look &look : looks) {
        theme.choices << tr(look.words);
        if ((m_themeOfDesktop ? asDesktop : m_shell->themeMode()) == QLatin1String(look.mode))
            theme.value = tr(look.words);
    }
    FormField size{.key = QStringLiteral("textScale"),
                   .kind = FieldKind::Choice,
                   .label = tr("Text size"),
                   .hint = tr("Ctrl and plus, Ctrl and minus on every page."),
                   .value = m_scaleOfDesktop ? tr("As the desktop is") : percent(m_shell->textScale()),
                   .choices = {tr("As the desktop is")}};
    for (const double scale : ShellViewModel::scales())
        size.choices << percent(scale);
    FormField speech{.key = QStringLiteral("speech"),
                     .kind = FieldKind::Choice,
                     .label = tr("Speech"),
                     .value = speechWords(m_shell->isShortSpeech()),
                     .choices = {speechWords(false), speechWords(true)}};
    FormField lock{.key = QStringLiteral("lockMinutes"),
                   .kind = FieldKind::Choice,
                   .label = tr("Lock after no key for"),
                   .hint = tr("A warning comes one minute before; any key keeps the records open."),
                   .value = minutesWords(m_shell->lockMinutes())};
    for (const int minutes : ShellViewModel::lockChoices())
        lock.choices << minutesWords(minutes);
    FormField language{.key = QStringLiteral("language"),
                       .kind = FieldKind::Choice,
                       .label = tr("Language and units"),
                       .hint = tr("Measures are kept as you type them, in centimetres or inches."),
                       .value = languageWords(m_language)};
    for (const QString &tag : languages())
        language.choices << languageWords(tag);
    std::vector<FormField> fields{std::move(theme)};
    if (m_shell->themeMode() == QLatin1String("own")) {
        const QString hint = tr("A name such as navy or cream, or six digits such as #10203A.");
        fields.push_back(
            {.key = QStringLiteral("ownInk"), .label = tr("Ink"), .hint = hint, .value = m_shell->ownInk()});
        fields.push_back({.key = QStringLiteral("ownPaper"),
                          .label = tr("Paper"),
                          .hint = hint,
                          .value = m_shell->ownPaper()});
    }
    const std::vector<FormField> others{
        std::move(size),
        std::move(speech),
        std::move(lock),
        std::move(language),
        FormField{.key = QStringLiteral("keys"), .kind = FieldKind::Heading, .label = tr("Keys")},
        FormField{.key = QStringLiteral("how"),
                  .kind = FieldKind::Quiet,
                  .label = tr("More than one key: put a comma between. Nothing switches a key off.")}};
    fields.insert(fields.end(), others.begin(), others.end());
    for (const KeyCommand &command : m_shell->keys()->rows())
        fields.push_back(keyField(command));
    for (FormField &field : fields)
        if (field.key == m_refusedKey) {
            field.value = m_refusedValue;
            field.error = m_refusedWhy;
        }
    m_form.setRows(std::move(fields));
}

} // namespace app
