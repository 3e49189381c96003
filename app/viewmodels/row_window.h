#pragma once
#include <QSortFilterProxyModel>
#include <QtQml/qqmlregistration.h>

namespace app {

/// At most `size` rows of a long list, from row `first` on: only these are made on screen. Row 0 here is row
/// `first` of the list.
class RowWindow : public QSortFilterProxyModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int first READ first NOTIFY turned)
    Q_PROPERTY(int size READ size WRITE setSize NOTIFY turned)
    Q_PROPERTY(int total READ total NOTIFY turned)

public:
    explicit RowWindow(QObject *parent = nullptr);
    [[nodiscard]] int first() const { return m_first; }
    [[nodiscard]] int size() const { return m_size; }
    /// Rows of the whole list.
    [[nodiscard]] int total() const;
    void setSize(int size);
    /// Shows the part that holds this row of the list.
    Q_INVOKABLE void turnTo(int row);
    void setSourceModel(QAbstractItemModel *list) override;

signals:
    void turned();

protected:
    [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex &parent) const override;

private:
    void refill();

    int m_first = 0, m_size = 40;
};

} // namespace app
