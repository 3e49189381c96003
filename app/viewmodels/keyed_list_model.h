#pragma once
#include <QAbstractListModel>
#include <QSet>
#include <algorithm>
#include <utility>
#include <vector>

namespace app {

/// A list whose rows have a unique `key`. New rows are matched with the old by key, so that the item on
/// screen lives on (and keeps the focus and what is typed) as long as its row does. `Row` has `QString key`
/// and ==.
template<class Row> class KeyedListModel : public QAbstractListModel {
public:
    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
    }
    [[nodiscard]] const std::vector<Row> &rows() const { return m_rows; }

    void setRows(std::vector<Row> rows) {
        if (!std::ranges::equal(rows, m_rows, {}, &Row::key, &Row::key))
            removeMissing(rows);
        if (m_rows.empty() && !rows.empty()) {
            beginInsertRows({}, 0, static_cast<int>(rows.size()) - 1);
            m_rows = std::move(rows);
            endInsertRows();
            return;
        }
        for (int i = 0; i < static_cast<int>(rows.size()); ++i)
            place(i, std::move(rows[static_cast<size_t>(i)]));
    }

protected:
    [[nodiscard]] const Row *rowAt(const QModelIndex &index) const {
        const bool inside = index.isValid() && index.row() >= 0 && index.row() < rowCount();
        return inside ? &m_rows[static_cast<size_t>(index.row())] : nullptr;
    }

private:
    void removeMissing(const std::vector<Row> &wanted) {
        QSet<QString> keys;
        for (const Row &row : wanted)
            keys.insert(row.key);
        for (int i = rowCount() - 1; i >= 0; --i) {
            if (keys.contains(m_rows[static_cast<size_t>(i)].key))
                continue;
            beginRemoveRows({}, i, i);
            m_rows.erase(m_rows.begin() + i);
            endRemoveRows();
        }
    }

    void place(int i, Row row) {
        int from = i;
        while (from < rowCount() && m_rows[static_cast<size_t>(from)].key != row.key)
            ++from;
        if (from == rowCount()) {
            beginInsertRows({}, i, i);
            m_rows.insert(m_rows.begin() + i, std::move(row));
            endInsertRows();
            return;
        }
        if (from != i) {
            beginMoveRows({}, from, from, {}, i);
            std::rotate(m_rows.begin() + i, m_rows.begin() + from, m_rows.begin() + from + 1);
            endMoveRows();
        }
        if (m_rows[static_cast<size_t>(i)] == row)
            return;
        m_rows[static_cast<size_t>(i)] = std::move(row);
        emit dataChanged(index(i), index(i));
    }

    std::vector<Row> m_rows;
};

} // namespace app
