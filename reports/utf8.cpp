#include "reports/utf8.h"
#include <QString>
#include <QStringDecoder>
#include <set>

namespace reports {

namespace {

std::string codeOf(char32_t character) {
    return QStringLiteral("U+%1").arg(uint(character), 4, 16, QLatin1Char('0')).toUpper().toStdString();
}

bool isVisible(char32_t character) {
    return QChar::isPrint(character) && !QChar::isSpace(character);
}

} // namespace

bool isUtf8(std::string_view bytes) {
    QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
    const QString read = decoder(QByteArrayView(bytes.data(), qsizetype(bytes.size())));
    return !decoder.hasError() && read.size() <= qsizetype(bytes.size());
}

std::u32string codePoints(std::string_view bytes) {
    return QString::fromUtf8(bytes.data(), qsizetype(bytes.size())).toStdU32String();
}

std::string toUtf8(std::u32string_view text) {
    return QString::fromUcs4(text.data(), qsizetype(text.size())).toStdString();
}

std::string named(const std::u32string &characters) {
    const std::set<char32_t> distinct(characters.begin(), characters.end());
    constexpr std::size_t most = 8;
    std::string list;
    std::size_t count = 0;
    for (const char32_t character : distinct) {
        if (count++ == most)
            return list + " and " + std::to_string(distinct.size() - most) + " more";
        list += list.empty() ? "" : ", ";
        list += isVisible(character) ? toUtf8({&character, 1}) + " (" + codeOf(character) + ")"
                                     : codeOf(character);
    }
    return list;
}

} // namespace reports
