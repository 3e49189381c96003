#include "app/viewmodels/partner_lines.h"
#include <QRegularExpression>
#include <algorithm>
#include <array>

namespace app {
namespace {

/// Who the client is, other clients, and what a test must not give away.
bool isPrivate(const QString &page) {
    static constexpr std::array pages{"caseload", "client", "markertest", "papers", "settings", "photos"};
    return std::ranges::any_of(pages, [&](const char *name) { return page == QLatin1String(name); });
}

/// Parts of the name and the code as whole words become "the client", or what is said `instead`.
QString withoutNames(QString words, const model::Client &client, const QString &instead) {
    const QString all = text(client.name) + QLatin1Char(' ') + text(client.code);
    for (const QString &part : all.split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts))
        if (part.size() > 1)
            words.replace(
                QRegularExpression(QStringLiteral("(?<!\\w)%1(?!\\w)").arg(QRegularExpression::escape(part)),
                                   QRegularExpression::CaseInsensitiveOption |
                                       QRegularExpression::UseUnicodePropertiesOption),
                instead);
    return words;
}

QString sentence(const QStringList &parts, const QString &between) {
    QStringList filled = parts;
    filled.removeAll(QString());
    return filled.join(between);
}

} // namespace

QStringList partnerLines(const QString &page, const QString &title, PageViewModel &model,
                         const model::Client &client, const model::Client *other) {
    QStringList lines{title};
    if (isPrivate(page))
        return lines << QObject::tr("This page is not shown here.");
    for (const auto &finding : model.findings()->rows())
        lines << sentence({finding.question, finding.answer, finding.reason}, QStringLiteral(". "));
    for (const auto &field : model.form()->rows())
        if (!field.value.isEmpty())
            lines << sentence({field.label, field.value}, QStringLiteral(": "));
    for (const auto &row : model.rows()->rows())
        lines << sentence({row.section, sentence({row.title, row.amount}, QStringLiteral(", ")), row.facts},
                          QStringLiteral(". "));
    for (QString &line : lines) {
        line = withoutNames(line, client, QObject::tr("the client"));
        if (other)
            line = withoutNames(line, *other, QObject::tr("the other client"));
    }
    lines.removeAll(QString());
    return lines;
}

} // namespace app
