#pragma once
#include "app/viewmodels/keyed_list_model.h"
#include <QtQml/qqmlregistration.h>

namespace app {

/// One row of a list, in the words that are shown.
///
/// `amount` stands at the right ("4"); `facts` are hers, `usual` the catalogue's; `flag` is a framed word
/// ("not known"). The reader hears `spoken` if it is given, else all of these; the position is added by the
/// list.
struct ListRow {
    QString key;
    QString title{};
    QString amount{};
    QString facts{};
    QString usual{};
    QString flag{};
    QString spoken{};
    QString section{}; // heading above the first row that has it, may be empty
    friend bool operator==(const ListRow &, const ListRow &) = default;
};

/// The rows of one list, shown by ListEntry.qml.
class RowModel : public KeyedListModel<ListRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by a view model")

public:
    using KeyedListModel::KeyedListModel;
    /// The row with this key, or -1.
    Q_INVOKABLE [[nodiscard]] int indexOf(const QString &key) const;
    /// Key and title of a row; empty where there is none.
    Q_INVOKABLE [[nodiscard]] QString keyAt(int row) const {
        return rowAt(index(row)) ? rowAt(index(row))->key : QString();
    }
    Q_INVOKABLE [[nodiscard]] QString titleAt(int row) const {
        return rowAt(index(row)) ? rowAt(index(row))->title : QString();
    }
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    [[nodiscard]] QString sectionStarting(int row) const;
};

} // namespace app
