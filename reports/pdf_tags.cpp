#include "reports/pdf_tags.h"
#include "reports/pdf_marks.h"
#include <QString>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

namespace reports {

using model::ErrorCode;
using model::fail;
using Object = QPDFObjectHandle;

namespace {

std::string xmlEscaped(const std::string &text) {
    return QString::fromStdString(text).toHtmlEscaped().toStdString();
}

std::string metadata(const Document &document) {
    std::string xmp = R"(<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/"
 xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<pdfuaid:part>1</pdfuaid:part>
)";
    xmp += "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">" + xmlEscaped(document.title) +
           "</rdf:li></rdf:Alt></dc:title>\n";
    xmp += "<dc:language><rdf:Bag><rdf:li>" + xmlEscaped(document.language) +
           "</rdf:li></rdf:Bag></dc:language>\n";
    if (!document.author.empty())
        xmp += "<dc:creator><rdf:Seq><rdf:li>" + xmlEscaped(document.author) +
               "</rdf:li></rdf:Seq></dc:creator>\n";
    if (!document.date.empty())
        xmp += "<xmp:CreateDate>" + xmlEscaped(document.date) + "T00:00:00Z</xmp:CreateDate>\n";
    return xmp + "</rdf:Description></rdf:RDF></x:xmpmeta>\n<?xpacket end=\"w\"?>";
}

Object numbersOf(const Rectangle &box) {
    Object array = Object::newArray();
    for (const double value : box)
        array.appendItem(Object::newReal(value, 2));
    return array;
}

class Tagger {
public:
    Tagger(QPDF &pdf, const TagTree &tree) : m_pdf(pdf), m_tree(tree) {}

    void tag() {
        for (QPDFPageObjectHelper &page : QPDFPageDocumentHelper(m_pdf).getAllPages())
            m_pages.push_back(page);
        if (m_pages.size() != m_tree.marks.size())
            throw std::runtime_error("the pages are not those that were drawn");
        rewriteMarks();
        for (std::size_t i = 0; i < m_tree.elements.size(); ++i)
            m_elements.push_back(m_pdf.makeIndirectObject(Object::newDictionary()));
        for (std::size_t i = 0; i < m_tree.elements.size(); ++i)
            fillElement(i);
        addLinks();
        addRoot();
        addBookmarks();
        completeFonts();
    }

private:
    void rewriteMarks() {
        for (std::size_t i = 0; i < m_pages.size(); ++i) {
            MarkRewriter rewriter(m_tree.marks[i]);
            m_pages[i].parseContents(&rewriter);
            m_numbers.push_back(rewriter.numbers);
            m_owners.push_back(Object::newArray());
            Object page = m_pages[i].getObjectHandle();
            page.replaceKey("/Contents", Object::newStream(&m_pdf, rewriter.content));
            page.replaceKey("/StructParents", Object::newInteger(static_cast<long long>(i)));
            page.replaceKey("/Tabs", Object::newName("/S"));
        }
    }

    void fillElement(TagTree::Id id) {
        const TagTree::Element &element = m_tree.elements[id];
        Object made = m_elements[id];
        made.replaceKey("/Type", Object::newName("/StructElem"));
        made.replaceKey("/S", Object::newName("/" + element.type));
        if (id != 0)
            made.replaceKey("/P", m_elements[element.parent]);
        if (!element.language.empty())
            made.replaceKey("/Lang", Object::newString(element.language));
        if (!element.alternative.empty())
            made.replaceKey("/Alt", Object::newUnicodeString(element.alternative));
        if (!element.actual.empty())
            made.replaceKey("/ActualText", Object::newUnicodeString(element.actual));
        if (!element.numbering.empty())
            made.replaceKey("/A", Object::parse("<</O /List /ListNumbering /" + element.numbering + ">>"));
        if (element.box) {
            Object layout = Object::parse("<</O /Layout /Placement /Block>>");
            layout.replaceKey("/BBox", numbersOf(*element.box));
            made.replaceKey("/A", layout);
        }
        made.replaceKey("/K", kidsOf(id));
    }

    Object kidsOf(TagTree::Id id) {
        Object kids = Object::newArray();
        for (const auto &kid : m_tree.elements[id].kids) {
            if (const auto *child = std::get_if<TagTree::Id>(&kid)) {
                kids.appendItem(m_elements[*child]);
                continue;
            }
            const auto &owned = std::get<TagTree::Owned>(kid);
            for (const int number : m_numbers[owned.page][owned.mark]) {
                Object mark = Object::parse("<</Type /MCR /MCID " + std::to_string(number) + ">>");
                mark.replaceKey("/Pg", m_pages[owned.page].getObjectHandle());
                kids.appendItem(mark);
                setOwner(owned.page, number, id);
            }
        }
        return kids;
    }

    void setOwner(std::size_t page, int number, TagTree::Id id) {
        Object &owners = m_owners[page];
        while (owners.getArrayNItems() <= number)
            owners.appendItem(Object::newNull());
        owners.setArrayItem(number, m_elements[id]);
    }

    void addLinks() {
        for (const TagTree::Link &link : m_tree.links) {
            Object page = m_pages[link.page].getObjectHandle();
            Object annotation = Object::parse("<</Type /Annot /Subtype /Link /F 4 /Border [0 0 0]>>");
            Rectangle around = link.lines.front();
            Object quads = Object::newArray();
            for (const Rectangle &line : link.lines) {
                around = {std::min(around[0], line[0]), std::min(around[1], line[1]),
                          std::max(around[2], line[2]), std::max(around[3], line[3])};
                for (const double value :
                     {line[0], line[3], line[2], line[3], line[0], line[1], line[2], line[1]})
                    quads.appendItem(Object::newReal(value, 2));
            }
            annotation.replaceKey("/Rect", numbersOf(around));
            annotation.replaceKey("/QuadPoints", quads);
            annotation.replaceKey("/Contents", Object::newUnicodeString(link.words));
            Object action = Object::parse("<</S /URI>>");
            action.replaceKey("/URI", Object::newString(link.address));
            annotation.replaceKey("/A", action);
            const std::size_t key = m_pages.size() + m_annotations.size();
            annotation.replaceKey("/StructParent", Object::newInteger(static_cast<long long>(key)));
            annotation = m_pdf.makeIndirectObject(annotation);
            m_annotations.push_back(m_elements[link.element]);
            if (!page.hasKey("/Annots"))
                page.replaceKey("/Annots", Object::newArray());
            page.getKey("/Annots").appendItem(annotation);
            Object reference = Object::parse("<</Type /OBJR>>");
            reference.replaceKey("/Obj", annotation);
            reference.replaceKey("/Pg", page);
            m_elements[link.element].getKey("/K").appendItem(reference);
        }
    }

    void addRoot() {
        Object numbers = Object::newArray();
        long long key = 0;
        for (Object &owners : m_owners) {
            numbers.appendItem(Object::newInteger(key++));
            numbers.appendItem(m_pdf.makeIndirectObject(owners));
        }
        for (Object &element : m_annotations) {
            numbers.appendItem(Object::newInteger(key++));
            numbers.appendItem(element);
        }
        Object parents = Object::newDictionary();
        parents.replaceKey("/Nums", numbers);
        Object root = m_pdf.makeIndirectObject(Object::parse("<</Type /StructTreeRoot>>"));
        root.replaceKey("/K", m_elements[0]);
        root.replaceKey("/ParentTree", m_pdf.makeIndirectObject(parents));
        root.replaceKey("/ParentTreeNextKey", Object::newInteger(key));
        m_elements[0].replaceKey("/P", root);
        m_pdf.getRoot().replaceKey("/StructTreeRoot", root);
    }

    /// Bookmarks nest as the headings do.
    void addBookmarks() {
        if (m_tree.bookmarks.empty())
            return;
        Object outlines = m_pdf.makeIndirectObject(Object::parse("<</Type /Outlines>>"));
        std::vector<Object> above{outlines}; // by level
        for (const TagTree::Bookmark &bookmark : m_tree.bookmarks) {
            above.resize(std::min(above.size(), std::size_t(bookmark.level)));
            Object parent = above.back();
            Object entry = m_pdf.makeIndirectObject(Object::newDictionary());
            entry.replaceKey("/Title", Object::newUnicodeString(bookmark.words));
            entry.replaceKey("/Parent", parent);
            Object place = Object::newArray();
            place.appendItem(m_pages[bookmark.page].getObjectHandle());
            place.appendItem(Object::newName("/XYZ"));
            place.appendItem(Object::newNull());
            place.appendItem(Object::newReal(bookmark.top, 2));
            place.appendItem(Object::newNull());
            entry.replaceKey("/Dest", place);
            if (parent.hasKey("/Last")) {
                entry.replaceKey("/Prev", parent.getKey("/Last"));
                parent.getKey("/Last").replaceKey("/Next", entry);
            } else {
                parent.replaceKey("/First", entry);
            }
            parent.replaceKey("/Last", entry);
            for (Object &holder : above)
                holder.replaceKey("/Count", Object::newInteger(countOf(holder) + 1));
            above.push_back(entry);
        }
        m_pdf.getRoot().replaceKey("/Outlines", outlines);
    }

    static long long countOf(Object &entry) {
        return entry.hasKey("/Count") ? entry.getKey("/Count").getIntValue() : 0;
    }

    /// The drawing library leaves out the map from characters to glyphs, which ISO 14289-1 clause 7.21.3.2
    /// asks for.
    void completeFonts() {
        for (Object &object : m_pdf.getAllObjects())
            if (object.isDictionaryOfType("/Font", "/CIDFontType2") && !object.hasKey("/CIDToGIDMap"))
                object.replaceKey("/CIDToGIDMap", Object::newName("/Identity"));
    }

    QPDF &m_pdf;
    const TagTree &m_tree;
    std::vector<QPDFPageObjectHelper> m_pages;
    std::vector<std::vector<std::vector<int>>> m_numbers; // by page, by mark
    std::vector<Object> m_owners;                         // by page
    std::vector<Object> m_elements;
    std::vector<Object> m_annotations; // the element of each
};

void describe(QPDF &pdf, const Document &document) {
    Object root = pdf.getRoot();
    root.replaceKey("/Lang", Object::newString(document.language));
    root.replaceKey("/MarkInfo", Object::parse("<</Marked true>>"));
    root.replaceKey("/ViewerPreferences", Object::parse("<</DisplayDocTitle true>>"));
    Object stream = Object::newStream(&pdf, metadata(document));
    stream.getDict().replaceKey("/Type", Object::newName("/Metadata"));
    stream.getDict().replaceKey("/Subtype", Object::newName("/XML"));
    root.replaceKey("/Metadata", stream);
    if (document.date.empty())
        pdf.getTrailer().getKey("/Info").removeKey("/CreationDate");
}

} // namespace

Result<std::string> tagPdf(const std::string &drawn, const TagTree &tree, const Document &document) {
    try {
        QPDF pdf;
        pdf.setSuppressWarnings(true);
        pdf.processMemoryFile("paper", drawn.data(), drawn.size());
        Tagger(pdf, tree).tag();
        describe(pdf, document);
        QPDFWriter writer(pdf);
        writer.setOutputMemory();
        writer.setMinimumPDFVersion("1.7");
        writer.setObjectStreamMode(qpdf_o_generate);
        writer.setDeterministicID(true);
        writer.write();
        const auto buffer = writer.getBufferSharedPointer();
        return std::string(reinterpret_cast<const char *>(buffer->getBuffer()), buffer->getSize());
    } catch (const std::exception &error) {
        return fail(ErrorCode::InputOutput,
                    "The print paper could not be tagged: " + std::string(error.what()) + ".");
    }
}

} // namespace reports
