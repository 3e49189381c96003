#pragma once
#include "app/viewmodels/keyed_list_model.h"
#include <QtQml/qqmlregistration.h>

namespace app {

/// One step of the visit in the rail. `number` is that of its key (Alt+number); `state` is in words ("9 of 16
/// places").
struct Step {
    QString key;
    int number = 0;
    QString title;
    QString state;
    bool done = false;
    bool here = false;
    friend bool operator==(const Step &, const Step &) = default;
};

class StepModel : public KeyedListModel<Step> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by the shell")

public:
    using KeyedListModel::KeyedListModel;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

} // namespace app
