#pragma once
#include "reports/pdf_tree.h"
#include <qpdf/QPDFPageObjectHelper.hh>
#include <string>
#include <vector>

namespace reports {

/// Rewrites the marks of one page's content: what is no content becomes an artifact, the rest gets the
/// numbers 0, 1, 2 ...
///
/// A mark gets several numbers where the drawing library replaced text within it: each such stretch stands
/// beside the others, not within them, because readers lose what follows a nested stretch.
class MarkRewriter : public QPDFObjectHandle::ParserCallbacks {
public:
    explicit MarkRewriter(const std::vector<Mark> &marks) : numbers(marks.size()), m_marks(marks) {}

    void handleObject(QPDFObjectHandle object, std::size_t, std::size_t) override;
    void handleEOF() override {}

    std::string content;
    std::vector<std::vector<int>> numbers; // by mark

private:
    void begin();
    void end();
    void open();
    void close();
    void emit(const std::string &operation);

    const std::vector<Mark> &m_marks;
    std::vector<QPDFObjectHandle> m_operands;
    std::size_t m_begun = 0; // marks so far; the current one is the last
    int m_depth = 0;
    int m_next = 0;
    bool m_open = false; // a mark is open in `content`
};

} // namespace reports
