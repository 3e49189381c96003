#include "reports/braille_pages.h"
#include "reports/prepare.h"
#include "reports/utf8.h"
#include <QCryptographicHash>
#include <QXmlStreamWriter>
#include <functional>
#include <sstream>

namespace reports {

using model::ErrorCode;
using model::fail;

namespace {

std::string lined(const std::vector<BraillePage> &pages,
                  const std::function<std::string(const Cells &)> &write, const char *lineEnd) {
    std::string text;
    for (const BraillePage &page : pages) {
        for (const Cells &line : page)
            text += write(line) + lineEnd;
        text += '\f';
    }
    return text;
}

/// The same document has the same name, without saying anything of it.
QString identifier(const std::vector<BraillePage> &pages) {
    const std::string text = lined(pages, asciiBraille, "\n");
    const auto hash = QCryptographicHash::hash(QByteArrayView(text.data(), qsizetype(text.size())),
                                               QCryptographicHash::Sha256);
    return QStringLiteral("braille-") + QString::fromLatin1(hash.toHex().left(16));
}

void writeHead(QXmlStreamWriter &xml, const Document &document, const QString &name) {
    const auto dublinCore = [&](const char *field, const QString &value) {
        if (!value.isEmpty())
            xml.writeTextElement(QStringLiteral("http://purl.org/dc/elements/1.1/"),
                                 QString::fromLatin1(field), value);
    };
    xml.writeStartElement(QStringLiteral("head"));
    xml.writeStartElement(QStringLiteral("meta"));
    dublinCore("format", QStringLiteral("application/x-pef+xml"));
    dublinCore("identifier", name);
    dublinCore("title", QString::fromStdString(document.title));
    dublinCore("creator", QString::fromStdString(document.author));
    dublinCore("language", QString::fromStdString(document.language));
    dublinCore("date", QString::fromStdString(document.date));
    xml.writeEndElement();
    xml.writeEndElement();
}

void writeBody(QXmlStreamWriter &xml, const std::vector<BraillePage> &pages, const BrailleLayout &layout) {
    xml.writeStartElement(QStringLiteral("body"));
    xml.writeStartElement(QStringLiteral("volume"));
    xml.writeAttribute(QStringLiteral("cols"), QString::number(layout.cells));
    xml.writeAttribute(QStringLiteral("rows"), QString::number(layout.lines));
    xml.writeAttribute(QStringLiteral("rowgap"), QStringLiteral("0"));
    xml.writeAttribute(QStringLiteral("duplex"), QStringLiteral("false"));
    xml.writeStartElement(QStringLiteral("section"));
    for (const BraillePage &page : pages) {
        xml.writeStartElement(QStringLiteral("page"));
        for (const Cells &line : page)
            xml.writeTextElement(QStringLiteral("row"), QString::fromStdString(toUtf8(line)));
        xml.writeEndElement();
    }
    xml.writeEndElement();
    xml.writeEndElement();
    xml.writeEndElement();
}

bool isPageNumber(const std::string &line) {
    const auto sign = line.find_first_not_of(' ');
    return sign != std::string::npos && line[sign] == '#' && line.size() > sign + 1 &&
           line.find_first_not_of("ABCDEFGHIJ", sign + 1) == std::string::npos;
}

std::vector<std::string> linesOf(const std::string &page) {
    std::vector<std::string> lines;
    std::istringstream stream(page);
    for (std::string line; std::getline(stream, line);) {
        if (line.ends_with('\r'))
            line.pop_back();
        lines.push_back(line);
    }
    if (!lines.empty() && isPageNumber(lines.back()))
        lines.pop_back();
    return lines;
}

} // namespace

Result<std::string> writeBrf(const Document &document, const BrailleLayout &layout) {
    return braillePages(document, layout).map([](const std::vector<BraillePage> &pages) {
        return lined(pages, asciiBraille, "\r\n");
    });
}

Result<std::string> writeUnicodeBraille(const Document &document, const BrailleLayout &layout) {
    return braillePages(document, layout).map([](const std::vector<BraillePage> &pages) {
        return lined(
            pages, [](const Cells &line) { return toUtf8(line); }, "\n");
    });
}

Result<std::string> writePef(const Document &document, const BrailleLayout &layout) {
    auto pages = braillePages(document, layout);
    if (!pages)
        return tl::unexpected(pages.error());
    QString text;
    QXmlStreamWriter xml(&text);
    xml.setAutoFormatting(true);
    xml.setAutoFormattingIndent(1);
    xml.writeStartDocument();
    xml.writeDefaultNamespace(QStringLiteral("http://www.daisy.org/ns/2008/pef"));
    xml.writeNamespace(QStringLiteral("http://purl.org/dc/elements/1.1/"), QStringLiteral("dc"));
    xml.writeStartElement(QStringLiteral("http://www.daisy.org/ns/2008/pef"), QStringLiteral("pef"));
    xml.writeAttribute(QStringLiteral("version"), QStringLiteral("2008-1"));
    writeHead(xml, *prepared(document, Links::Spelled), identifier(*pages));
    writeBody(xml, *pages, layout);
    xml.writeEndElement();
    xml.writeEndDocument();
    return text.toStdString();
}

Result<std::string> readBrfBack(const std::string &brf, int grade) {
    std::string words;
    Cells paragraph;
    const auto close = [&]() -> Result<void> {
        return printOf(std::exchange(paragraph, {}), grade).map([&](const std::string &read) {
            words += (words.empty() || read.empty() ? "" : "\n\n") + read;
        });
    };
    std::istringstream stream(brf);
    for (std::string page; std::getline(stream, page, '\f');) {
        for (const std::string &line : linesOf(page)) {
            const auto first = line.find_first_not_of(' ');
            if (first == std::string::npos) {
                if (auto closed = close(); !closed)
                    return tl::unexpected(closed.error());
                continue;
            }
            auto cells = cellsOfAscii(line.substr(first));
            if (!cells)
                return tl::unexpected(cells.error());
            paragraph += (paragraph.empty() ? U"" : U"\u2800") + *cells;
        }
    }
    if (auto closed = close(); !closed)
        return tl::unexpected(closed.error());
    return words;
}

Result<std::string> brailleLabel(const std::string &text, int grade) {
    Document label;
    label.blocks.emplace_back(Paragraph{plain(text)});
    const auto ready = prepared(label, Links::Kept);
    if (!ready && ready.error().code == ErrorCode::Missing)
        return fail(ErrorCode::Missing, "A braille label needs words.");
    if (!ready)
        return tl::unexpected(ready.error());
    return brailleOf(joined(std::get<Paragraph>(ready->blocks.front()).text), grade)
        .map([](const Cells &cells) { return toUtf8(cells); });
}

} // namespace reports
