#include "app/viewmodels/step_model.h"

namespace app {
namespace {

enum Role { Key = Qt::UserRole + 1, Number, Title, State, Done, Here };

} // namespace

QVariant StepModel::data(const QModelIndex &index, int role) const {
    const Step *step = rowAt(index);
    if (!step)
        return {};
    switch (role) {
    case Key:
        return step->key;
    case Number:
        return step->number;
    case Title:
        return step->title;
    case State:
        return step->state;
    case Done:
        return step->done;
    case Here:
        return step->here;
    }
    return {};
}

QHash<int, QByteArray> StepModel::roleNames() const {
    return {{Key, "key"},        {Number, "number"}, {Title, "title"},
            {State, "progress"}, {Done, "done"},     {Here, "here"}};
}

} // namespace app
