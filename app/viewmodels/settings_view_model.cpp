#include "app/viewmodels/settings_view_model.h"
#include "app/local_words.h"
#include <array>

namespace app {
namespace {

struct Look {
    const char *mode;
    const char *words;
};
constexpr std::array looks{
    Look{"light", QT_TRANSLATE_NOOP("app::SettingsViewModel", "Light")},
    Look{"dark", QT_TRANSLATE_NOOP("app::SettingsViewModel", "Dark")},
    Look{"contrast", QT_TRANSLATE_NOOP("app::SettingsViewModel", "High contrast, dark")},
    Look{"paper", QT_TRANSLATE_NOOP("app::SettingsViewModel", "High contrast, light")},
    Look{"own", QT_TRANSLATE_NOOP("app::SettingsViewModel", "Own colours")}};

const QString keyPrefix = QStringLiteral("key.");
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
    connect(shell, &ShellViewModel::looksChanged, this, [this, shell] {
        fill();
        emit kept(QStringLiteral("theme"), shell->themeMode());
        emit kept(QStringLiteral("textScale"), QString::number(shell->textScale()));
        emit kept(QStringLiteral("ownInk"), shell->ownInk());
        emit kept(QStringLiteral("ownPaper"), shell->ownPaper());
        emit kept(QStringLiteral("lockMinutes"), QString::number(shell->lockMinutes()));
        emit kept(QStringLiteral("speech"), shell->isShortSpeech() ? shortSpeech : fullSpeech);
    });
    fill();
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
    for (const int minutes : ShellViewModel::lockChoices())
        if (key == QLatin1String("lockMinutes") && value == minutesWords(minutes))
            taken = QString::number(minutes);
    if (key == QLatin1String("speech"))
        taken = value == speechWords(true) ? shortSpeech : fullSpeech;
    for (const QString &language : languages())
        if (key == QLatin1String("language") && value == languageWords(language))
            taken = language;
    const QString why = apply(key, taken);
    if (why.isEmpty()) {
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
    if (const QString ink = keptOf(QStringLiteral("ownInk")), paper = keptOf(QStringLiteral("ownPaper"));
        !ink.isEmpty() && !paper.isEmpty())
        static_cast<void>(m_shell->setOwnColours(ink, paper));
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
        m_shell->setThemeMode(value);
    else if (key == QLatin1String("textScale"))
        m_shell->setTextScale(value.toDouble());
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
        if (m_shell->themeMode() == QLatin1String(look.mode))
            theme.value = tr(look.words);
    }
    FormField size{.key = QStringLiteral("textScale"),
                   .kind = FieldKind::Choice,
                   .label = tr("Text size"),
                   .hint = tr("Ctrl and plus, Ctrl and minus on every page."),
                   .value = percent(m_shell->textScale())};
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
