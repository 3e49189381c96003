#pragma once
#include "app/viewmodels/form_model.h"
#include "app/viewmodels/row_model.h"
#include "app/viewmodels/settings_view_model.h"

namespace gallery {

/// A shell with invented pages, a form that answers, and an undo of its edits.
class GalleryShell : public app::ShellViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("owned by main")
    Q_PROPERTY(app::FormModel *form READ form CONSTANT)
    Q_PROPERTY(app::RowModel *things READ things CONSTANT)

public:
    explicit GalleryShell(QObject *parent = nullptr);
    app::FormModel *form() { return &m_form; }
    app::RowModel *things() { return &m_things; }
    QStringList pageKeys() const;
    Q_INVOKABLE void edit(const QString &key, const QString &value);
    Q_INVOKABLE void removeThing(const QString &key);
    Q_INVOKABLE void work();
    Q_INVOKABLE void unlock();
    void undo() override;
    void stopWork() override;

protected:
    void closeRecord() override;

private:
    void fill();
    app::SettingsViewModel m_settings{this};
    app::FormModel m_form;
    app::RowModel m_things;
    std::vector<std::vector<app::FormField>> m_before;
};

} // namespace gallery
