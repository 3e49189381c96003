#pragma once
#include "app/viewmodels/keyed_list_model.h"
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace app {

enum class FieldKind { Text, Number, Choice, YesNo, Multiline, Date, File, Folder, Heading, Caution, Quiet };

/// One line of a form, in the words that are shown. `value` is what was typed or chosen.
///
/// Choice: `value` is one of `choices`, or empty for none. YesNo: "yes", "no", or empty for not asked.
/// File: the path of a file; `choices` are the ends of the names it may have, such as "jpg". Folder: the path
/// of a folder.
/// Heading, Caution and Quiet have only a `label`, which is shown as such. `note` is a result beside the
/// field ("labels at 60 cm: 36 point"). A field with `unavailable` (the reason, a sentence) is shown and read
/// but not changed.
struct FormField {
    QString key;
    FieldKind kind = FieldKind::Text;
    QString label{};
    QString hint{};
    QString value{};
    QString unit{};
    QStringList choices{};
    QString error{};
    QString note{};
    QString unavailable{};
    bool noteRoom = false; // a line is kept free for the note, so that fields below stay where they are
    friend bool operator==(const FormField &, const FormField &) = default;
};

/// The fields of one form, shown by FormView.qml.
class FormModel : public KeyedListModel<FormField> {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by a view model")

public:
    using KeyedListModel::KeyedListModel;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
};

} // namespace app
