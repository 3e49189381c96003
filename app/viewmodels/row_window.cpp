#include "app/viewmodels/row_window.h"
#include <algorithm>

namespace app {

RowWindow::RowWindow(QObject *parent) : QObject(parent) {}

void RowWindow::setSize(int size) {
    if (size == m_part.size || size < 1)
        return;
    m_part.size = size;
    refill();
}

void RowWindow::turnTo(int row) {
    const int first = row / m_part.size * m_part.size;
    if (first == m_part.first)
        return;
    m_part.first = first;
    refill();
}

void RowWindow::setList(RowModel *list) {
    if (m_list)
        disconnect(m_list, nullptr, this, nullptr);
    m_list = list;
    m_part.first = 0;
    m_part.setSourceModel(list);
    if (list) {
        connect(list, &QAbstractItemModel::rowsInserted, this, &RowWindow::refill);
        connect(list, &QAbstractItemModel::rowsRemoved, this, &RowWindow::refill);
        connect(list, &QAbstractItemModel::rowsMoved, this, &RowWindow::refill);
    }
    emit turned();
}

void RowWindow::refill() {
    if (m_part.first >= total())
        m_part.first = std::max(0, total() - 1) / m_part.size * m_part.size;
    m_part.invalidateFilter();
    emit turned();
}

} // namespace app
