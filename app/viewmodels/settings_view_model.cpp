#include "app/viewmodels/settings_view_model.h"
#include <array>

namespace app {
namespace {

struct Look {
    const char *mode;
    const char *words;
};
constexpr std::array looks{Look{"light", QT_TRANSLATE_NOOP("app::SettingsViewModel", "Light")},
                           Look{"dark", QT_TRANSLATE_NOOP("app::SettingsViewModel", "Dark")},
                           Look{"contrast", QT_TRANSLATE_NOOP("app::SettingsViewModel", "High contrast")}};

const QString keyPrefix = QStringLiteral("key.");
const QString switchedOff = QStringLiteral("off");

QString percent(double scale) {
    return SettingsViewModel::tr("%1 percent").arg(qRound(100 * scale));
}

} // namespace

SettingsViewModel::SettingsViewModel(ShellViewModel *shell) : QObject(shell), m_shell(shell) {
    connect(shell, &ShellViewModel::looksChanged, this, [this, shell] {
        fill();
        emit kept(QStringLiteral("theme"), shell->themeMode());
        emit kept(QStringLiteral("textScale"), QString::number(shell->textScale()));
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
    const QString why = apply(key, taken);
    if (why.isEmpty()) {
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
    for (const QString &look : {QStringLiteral("theme"), QStringLiteral("textScale")})
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

QString SettingsViewModel::apply(const QString &key, const QString &value) {
    if (key == QLatin1String("theme"))
        m_shell->setThemeMode(value);
    else if (key == QLatin1String("textScale"))
        m_shell->setTextScale(value.toDouble());
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
    std::vector<FormField> fields{
        std::move(theme), std::move(size),
        FormField{.key = QStringLiteral("keys"), .kind = FieldKind::Heading, .label = tr("Keys")},
        FormField{.key = QStringLiteral("how"),
                  .kind = FieldKind::Quiet,
                  .label = tr("More than one key: put a comma between. Nothing switches a key off.")}};
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
