#pragma once
#include "app/viewmodels/row_model.h"
#include <QObject>
#include <QPointer>
#include <QSortFilterProxyModel>

namespace app {

/// At most `size` rows of a long list, from row `first` on: only these are made on screen. Row 0 of `rows` is
/// row `first` of the list.
class RowWindow : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(app::RowModel *list READ list WRITE setList NOTIFY turned)
    Q_PROPERTY(QObject *rows READ rows CONSTANT)
    Q_PROPERTY(int first READ first NOTIFY turned)
    Q_PROPERTY(int size READ size WRITE setSize NOTIFY turned)
    Q_PROPERTY(int total READ total NOTIFY turned)

public:
    explicit RowWindow(QObject *parent = nullptr);
    [[nodiscard]] RowModel *list() const { return m_list; }
    void setList(RowModel *list);
    /// The part shown, a model with the roles of RowModel.
    [[nodiscard]] QAbstractItemModel *rows() { return &m_part; }
    [[nodiscard]] int first() const { return m_part.first; }
    [[nodiscard]] int size() const { return m_part.size; }
    /// Rows of the whole list.
    [[nodiscard]] int total() const { return m_list ? m_list->rowCount() : 0; }
    void setSize(int size);
    /// Shows the part that holds this row of the list.
    Q_INVOKABLE void turnTo(int row);

signals:
    void turned();

private:
    struct Part : QSortFilterProxyModel {
        int first = 0, size = 40;
        [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex & /*parent*/) const override {
            return row >= first && row < first + size;
        }
        using QSortFilterProxyModel::invalidateFilter;
    };
    void refill();

    QPointer<RowModel> m_list;
    Part m_part;
};

} // namespace app
