#include "reports/pdf_marks.h"
#include <set>
#include <stdexcept>

namespace reports {

namespace {

/// Operators that paint, or begin a path: from here on content has to be inside a mark.
bool paints(const std::string &operation) {
    static const std::set<std::string> all{"Tj", "TJ", "'", "\"", "Do", "sh", "m", "re"};
    return all.count(operation) > 0;
}

std::string beginning(Mark kind, int number) {
    switch (kind) {
    case Mark::Layout:
        return "/Artifact <</Type /Layout>> BDC\n";
    case Mark::Footer:
        return "/Artifact <</Type /Pagination /Subtype /Footer>> BDC\n";
    case Mark::Content:
        break;
    }
    return "/Span <</MCID " + std::to_string(number) + ">> BDC\n";
}

} // namespace

void MarkRewriter::handleObject(QPDFObjectHandle object, std::size_t, std::size_t) {
    if (!object.isOperator()) {
        m_operands.push_back(object);
        return;
    }
    const std::string operation = object.getOperatorValue();
    if (operation == "BDC" || operation == "BMC") {
        begin();
    } else if (operation == "EMC") {
        end();
    } else if (operation == "BT" || operation == "ET") {
        // Marks and text objects must not overlap.
        close();
        emit(operation);
    } else {
        if (m_depth > 0 && paints(operation))
            open();
        emit(operation);
    }
    m_operands.clear();
}

void MarkRewriter::begin() {
    if (m_depth++ == 0) {
        if (m_begun++ == m_marks.size())
            throw std::runtime_error("more marks than were drawn");
        return;
    }
    if (m_marks[m_begun - 1] != Mark::Content || m_operands.size() < 2 || !m_operands[1].isDictionary())
        return;
    QPDFObjectHandle replaced = m_operands[1].getKey("/ActualText");
    if (!replaced.isString())
        return;
    close();
    numbers[m_begun - 1].push_back(m_next);
    content +=
        "/Span <</MCID " + std::to_string(m_next++) + " /ActualText " + replaced.unparseBinary() + ">> BDC\n";
    m_open = true;
}

void MarkRewriter::end() {
    if (--m_depth < 0)
        throw std::runtime_error("a mark ends that did not begin");
    close();
}

void MarkRewriter::open() {
    if (m_open)
        return;
    const std::size_t mark = m_begun - 1;
    content += beginning(m_marks[mark], m_next);
    if (m_marks[mark] == Mark::Content)
        numbers[mark].push_back(m_next++);
    m_open = true;
}

void MarkRewriter::close() {
    if (m_open)
        content += "EMC\n";
    m_open = false;
}

void MarkRewriter::emit(const std::string &operation) {
    for (QPDFObjectHandle &operand : m_operands)
        content += operand.unparse() + ' ';
    content += operation + '\n';
}

} // namespace reports
