#pragma once
#include "app/viewmodels/keyed_list_model.h"
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace app {

/// What stands beside the entry. `kind` is "finding" (question, answer, reason), "caution", "error" or
/// "quiet" (only `answer`). `ofRow`: it is about the row in hand of the page's list, and stands under it
/// where there is but one column.
struct FindingRow {
    QString key;
    QString kind = QStringLiteral("finding");
    QString question{};
    QString answer{};
    QString reason{};
    bool ofRow = false;
    friend bool operator==(const FindingRow &, const FindingRow &) = default;
};

class FindingModel : public KeyedListModel<FindingRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by a view model")

public:
    using KeyedListModel::KeyedListModel;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

/// A button of a page. `primary`: the one next thing. `unavailable`: why not now.
struct ActionRow {
    QString key;
    QString title{};
    QString keyName{};
    bool primary = false;
    QString unavailable{};
    friend bool operator==(const ActionRow &, const ActionRow &) = default;
};

class ActionModel : public KeyedListModel<ActionRow> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by a view model")

public:
    using KeyedListModel::KeyedListModel;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

} // namespace app
