#include "app/viewmodels/row_window.h"
#include <algorithm>

namespace app {

RowWindow::RowWindow(QObject *parent) : QSortFilterProxyModel(parent) {}

int RowWindow::total() const {
    return sourceModel() ? sourceModel()->rowCount() : 0;
}

void RowWindow::setSize(int size) {
    if (size == m_size || size < 1)
        return;
    m_size = size;
    refill();
}

void RowWindow::turnTo(int row) {
    const int first = row / m_size * m_size;
    if (first == m_first)
        return;
    m_first = first;
    refill();
}

void RowWindow::setSourceModel(QAbstractItemModel *list) {
    if (sourceModel())
        disconnect(sourceModel(), nullptr, this, nullptr);
    m_first = 0;
    QSortFilterProxyModel::setSourceModel(list);
    if (list)
        for (const auto change : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved})
            connect(list, change, this, &RowWindow::refill);
    if (list)
        connect(list, &QAbstractItemModel::rowsMoved, this, &RowWindow::refill);
    emit turned();
}

bool RowWindow::filterAcceptsRow(int row, const QModelIndex & /*parent*/) const {
    return row >= m_first && row < m_first + m_size;
}

void RowWindow::refill() {
    if (m_first >= total())
        m_first = std::max(0, total() - 1) / m_size * m_size;
    invalidateFilter();
    emit turned();
}

} // namespace app
