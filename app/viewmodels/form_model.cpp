#include "app/viewmodels/form_model.h"

namespace app {
namespace {

enum Role {
    Key = Qt::UserRole + 1,
    Kind,
    Label,
    Hint,
    Value,
    Unit,
    Choices,
    Error,
    Note,
    Unavailable,
    NoteRoom
};

QString kindName(FieldKind kind) {
    switch (kind) {
    case FieldKind::Text:
        return QStringLiteral("text");
    case FieldKind::Number:
        return QStringLiteral("number");
    case FieldKind::Choice:
        return QStringLiteral("choice");
    case FieldKind::YesNo:
        return QStringLiteral("yesno");
    case FieldKind::Multiline:
        return QStringLiteral("multiline");
    case FieldKind::Date:
        return QStringLiteral("date");
    case FieldKind::File:
        return QStringLiteral("file");
    case FieldKind::Folder:
        return QStringLiteral("folder");
    case FieldKind::Heading:
        return QStringLiteral("heading");
    case FieldKind::Caution:
        return QStringLiteral("caution");
    case FieldKind::Quiet:
        return QStringLiteral("quiet");
    }
    return {};
}

} // namespace

QVariant FormModel::data(const QModelIndex &index, int role) const {
    const FormField *field = rowAt(index);
    if (!field)
        return {};
    switch (role) {
    case Key:
        return field->key;
    case Kind:
        return kindName(field->kind);
    case Label:
        return field->label;
    case Hint:
        return field->hint;
    case Value:
        return field->value;
    case Unit:
        return field->unit;
    case Choices:
        return field->choices;
    case Error:
        return field->error;
    case Note:
        return field->note;
    case Unavailable:
        return field->unavailable;
    case NoteRoom:
        return field->noteRoom;
    }
    return {};
}

QHash<int, QByteArray> FormModel::roleNames() const {
    return {{Key, "key"},          {Kind, "kind"},
            {Label, "label"},      {Hint, "hint"},
            {Value, "value"},      {Unit, "unit"},
            {Error, "error"},      {Note, "note"},
            {Choices, "choices"},  {Unavailable, "unavailable"},
            {NoteRoom, "noteRoom"}};
}

} // namespace app
