#include "app/viewmodels/finding_model.h"
#include "app/local_words.h"

namespace app {
namespace {

enum FindingRole { FindingKey = Qt::UserRole + 1, Kind, Question, Answer, Reason, OfRow };
enum ActionRole { ActionKey = Qt::UserRole + 1, Title, KeyName, Primary, Unavailable };

} // namespace

QVariant FindingModel::data(const QModelIndex &index, int role) const {
    const FindingRow *row = rowAt(index);
    if (!row)
        return {};
    switch (role) {
    case FindingKey:
        return row->key;
    case Kind:
        return row->kind;
    case Question:
        return localWords(row->question);
    case Answer:
        return localWords(row->answer);
    case Reason:
        return localWords(row->reason);
    case OfRow:
        return row->ofRow;
    }
    return {};
}

QHash<int, QByteArray> FindingModel::roleNames() const {
    return {{FindingKey, "key"}, {Kind, "kind"},     {Question, "question"},
            {Answer, "answer"},  {Reason, "reason"}, {OfRow, "ofRow"}};
}

QVariant ActionModel::data(const QModelIndex &index, int role) const {
    const ActionRow *row = rowAt(index);
    if (!row)
        return {};
    switch (role) {
    case ActionKey:
        return row->key;
    case Title:
        return row->title;
    case KeyName:
        return row->keyName;
    case Primary:
        return row->primary;
    case Unavailable:
        return row->unavailable;
    }
    return {};
}

QHash<int, QByteArray> ActionModel::roleNames() const {
    return {{ActionKey, "key"},
            {Title, "title"},
            {KeyName, "keyName"},
            {Primary, "primary"},
            {Unavailable, "unavailable"}};
}

} // namespace app
