#include "app/viewmodels/row_model.h"
#include <QStringList>

namespace app {
namespace {

enum Role { Key = Qt::UserRole + 1, Title, Amount, Facts, Usual, Flag, Spoken, Section };

QString spokenWords(const ListRow &row) {
    if (!row.spoken.isEmpty())
        return row.spoken;
    QStringList parts{row.amount.isEmpty() ? row.title : row.title + QStringLiteral(", ") + row.amount};
    for (const QString &part : {row.flag, row.facts})
        if (!part.isEmpty())
            parts << part;
    if (!row.usual.isEmpty())
        parts << RowModel::tr("usual: %1").arg(row.usual);
    return parts.join(QStringLiteral(", "));
}

} // namespace

QVariant RowModel::data(const QModelIndex &index, int role) const {
    const ListRow *row = rowAt(index);
    if (!row)
        return {};
    switch (role) {
    case Key:
        return row->key;
    case Title:
        return row->title;
    case Amount:
        return row->amount;
    case Facts:
        return row->facts;
    case Usual:
        return row->usual;
    case Flag:
        return row->flag;
    case Spoken:
        return spokenWords(*row);
    case Section:
        return sectionStarting(index.row());
    }
    return {};
}

QHash<int, QByteArray> RowModel::roleNames() const {
    return {{Key, "key"},     {Title, "title"}, {Amount, "amount"}, {Facts, "facts"},
            {Usual, "usual"}, {Flag, "flag"},   {Spoken, "spoken"}, {Section, "section"}};
}

QString RowModel::sectionStarting(int row) const {
    const auto at = static_cast<size_t>(row);
    if (at > 0 && rows()[at - 1].section == rows()[at].section)
        return {};
    return rows()[at].section;
}

} // namespace app
