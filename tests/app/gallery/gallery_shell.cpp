#include "gallery_shell.h"
#include <algorithm>

namespace gallery {

using app::FieldKind;

namespace {

QUrl galleryFile(const QString &name) {
    return QUrl(QStringLiteral("qrc:/qt/qml/Gallery/%1.qml").arg(name));
}

} // namespace

GalleryShell::GalleryShell(QObject *parent) : ShellViewModel(parent) {
    const QString help =
        tr("This page shows controls.\nTab goes from one to the next.\nF12 says where you are.");
    addPage({"fields", tr("Fields"), galleryFile("FieldsPage"), {}, help});
    addPage({"form", tr("Form and list"), galleryFile("FormPage"), {}, help});
    addPage({"pictures", tr("Pictures"), galleryFile("PicturesPage"), {}, help});
    addPage({"settings",
             tr("Settings"),
             QUrl("qrc:/qt/qml/Feltmark/screens/SettingsScreen.qml"),
             {{"settings", QVariant::fromValue(&m_settings)}},
             help});
    addPage({"broken", tr("Broken"), galleryFile("NoSuchPage"), {}, help});
    addPage({"locked", tr("Locked"), galleryFile("LockedPage"), {}, help});
    setClient(tr("Invented Person"), tr("Visit 4, 25 November"));
    setSteps({{"fields", 1, tr("Fields"), tr("done"), true, false},
              {"form", 2, tr("Form and list"), tr("2 not tested"), false, false},
              {"pictures", 3, tr("Pictures"), tr("not begun"), false, false}});
    fill();
    openPage(QStringLiteral("fields"));
}

void GalleryShell::fill() {
    m_form.setRows({
        {.key = "part", .kind = FieldKind::Heading, .label = tr("Measured today")},
        {.key = "distance",
         .kind = FieldKind::Number,
         .label = tr("Reading distance"),
         .hint = tr("As she holds the page."),
         .value = "40",
         .unit = tr("cm"),
         .note = tr("Labels at 40 cm: about 24 point.")},
        {.key = "light",
         .kind = FieldKind::Choice,
         .label = tr("Light on the worktop"),
         .value = tr("Fair"),
         .choices = {tr("Bright"), tr("Fair"), tr("Dim")}},
        {.key = "implant",
         .kind = FieldKind::YesNo,
         .label = tr("Any implant"),
         .hint = tr("Heart, nerve, ear.")},
        {.key = "unit",
         .kind = FieldKind::Choice,
         .label = tr("Kind of unit"),
         .value = tr("Larder"),
         .choices = {tr("Base cupboard"), tr("Drawer stack"), tr("Fridge"), tr("Larder"), tr("Rack"),
                     tr("Wall cupboard"), tr("Worktop")}},
        {.key = "caution", .kind = FieldKind::Caution, .label = tr("Not asked counts as yes: no magnets.")},
        {.key = "words",
         .kind = FieldKind::Multiline,
         .label = tr("Her own words"),
         .value = "I want\nmy tea."},
        {.key = "seen",
         .kind = FieldKind::Date,
         .label = tr("Date of the letter"),
         .value = "2026-11-25",
         .unavailable = tr("The letter is signed. Write an addendum.")},
    });
    std::vector<app::ListRow> things;
    things.push_back(
        {.key = "tomatoes", .title = tr("Chopped tomatoes"), .amount = "4", .usual = tr("tin, 400 g")});
    things.push_back(
        {.key = "rice", .title = tr("Rice"), .amount = "1", .facts = tr("daily"), .usual = tr("bag, 1 kg")});
    things.push_back({.key = "syrup",
                      .title = tr("Pomelo syrup"),
                      .facts = tr("Two questions are open: shape and size."),
                      .flag = tr("not known")});
    m_things.setRows(std::move(things));
}

void GalleryShell::edit(const QString &key, const QString &value) {
    std::vector<app::FormField> fields = m_form.rows();
    m_before.push_back(fields);
    const auto field = std::ranges::find(fields, key, &app::FormField::key);
    field->value = value;
    if (field->kind == FieldKind::Number) {
        bool isNumber = false;
        value.toDouble(&isNumber);
        field->error = isNumber ? QString() : tr("Not a distance: %1. Try 40. Kept.").arg(value);
        field->note = isNumber ? tr("Labels at %1 cm: about 24 point.").arg(value) : QString();
    }
    const bool isSaved = field->error.isEmpty();
    m_form.setRows(std::move(fields));
    if (isSaved)
        say(tr("Saved."));
}

void GalleryShell::removeThing(const QString &key) {
    std::vector<app::ListRow> things = m_things.rows();
    std::erase_if(things, [&](const app::ListRow &row) { return row.key == key; });
    m_things.setRows(std::move(things));
    say(tr("Taken out."));
}

QStringList GalleryShell::pageKeys() const {
    QStringList keys;
    for (const app::Page &page : pages())
        keys << page.key;
    return keys;
}

void GalleryShell::stopWork() {
    endWork(tr("Stopped."));
}

void GalleryShell::work() {
    beginWork(tr("Planning."));
    showProgress(0.4);
}

void GalleryShell::unlock() {
    setLocked(false);
    openPage(QStringLiteral("fields"));
}

void GalleryShell::closeRecord() {
    ShellViewModel::closeRecord();
    openPage(QStringLiteral("locked"));
}

void GalleryShell::undo() {
    if (m_before.empty()) {
        ShellViewModel::undo();
        return;
    }
    m_form.setRows(m_before.back());
    m_before.pop_back();
    say(tr("Undone: last change of the form."));
}

} // namespace gallery
