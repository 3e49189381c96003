#include "app/viewmodels/row_model.h"
#include "app/viewmodels/sentences.h"

namespace app {
namespace {

enum Role { Key = Qt::UserRole + 1, Title, Amount, Facts, Usual, Flag, Spoken, Section };

QString spokenWords(const ListRow &row) {
    const QString title = cutShort(row.title);
    if (!row.spoken.isEmpty())
        return title == row.title ? row.spoken : QString(row.spoken).replace(row.title, title);
    const QString usual = row.usual.isEmpty() ? QString() : RowModel::tr("usual: %1").arg(row.usual);
    QString words = title;
    for (const QString &part : {row.amount, row.flag, row.facts, usual})
        if (!part.isEmpty())
            words += (words.endsWith(QLatin1Char('.')) ? QStringLiteral(" ") : QStringLiteral(", ")) + part;
    return words;
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

int RowModel::indexOf(const QString &key) const {
    const auto found = std::ranges::find(rows(), key, &ListRow::key);
    return found == rows().end() ? -1 : static_cast<int>(found - rows().begin());
}

QHash<int, QByteArray> RowModel::roleNames() const {
    return {{Key, "key"},     {Title, "title"}, {Amount, "amount"}, {Facts, "facts"},
            {Usual, "usual"}, {Flag, "flag"},   {Spoken, "spoken"}, {Section, "section"}};
}

QString RowModel::sectionStarting(int row) const {
    const auto at = static_cast<size_t>(row);
    if (at > 0 && rows()[at - 1].section == rows()[at].section)
        return {};
    return cutShort(rows()[at].section);
}

} // namespace app
