#include "reports/pdf_tree.h"

namespace reports {

TagTree::Id TagTree::add(Id parent, std::string type) {
    elements.push_back(Element{.type = std::move(type), .parent = parent});
    return elements.size() - 1;
}

void TagTree::own(Id owner, std::size_t page) {
    attach(owner);
    elements[owner].kids.emplace_back(Owned{page, marks[page].size()});
    marks[page].push_back(Mark::Content);
}

void TagTree::attach(Id element) {
    if (elements[element].attached)
        return;
    elements[element].attached = true;
    const Id parent = elements[element].parent;
    attach(parent);
    elements[parent].kids.emplace_back(element);
}

} // namespace reports
