#include "app/pages/entries.h"
#include "app/pages/kitchen_page.h"
#include "model/sentence.h"
#include <algorithm>

namespace app {

using model::Case;
using model::ErrorCode;
using model::fail;
using model::Id;
using model::Place;
using model::Result;
using model::Sentence;
using model::Unit;

namespace {

constexpr double longestCm = 500;

/// Takes a length field of a part with this id; `member` is one of its optional lengths.
template<class Part>
auto lengthField(std::vector<Part> Case::*list, const Id &id, std::optional<model::Length> Part::*member) {
    return [list, id, member](Case &record, const QString &typed) -> Result<void> {
        auto length = lengthOrNone(typed, longestCm);
        if (!length)
            return tl::unexpected(length.error());
        for (auto &part : record.*list)
            if (part.id == id)
                part.*member = std::move(*length);
        return {};
    };
}

template<class Part, class T>
auto choiceField(std::vector<Part> Case::*list, const Id &id, T Part::*member, const Choices<T> &choices) {
    return [list, id, member, &choices](Case &record, const QString &chosen) -> Result<void> {
        for (auto &part : record.*list)
            if (part.id == id)
                part.*member = choices.valueOf(chosen).value_or(part.*member);
        return {};
    };
}

template<class Part> auto nameField(std::vector<Part> Case::*list, const Id &id) {
    return [list, id](Case &record, const QString &typed) -> Result<void> {
        if (typed.trimmed().isEmpty())
            return fail(ErrorCode::Missing, Sentence::tr("A name is needed. The one before is kept."));
        for (auto &part : record.*list)
            if (part.id == id)
                part.name = typed.trimmed().toStdString();
        return {};
    };
}

QString usualHint(const std::optional<model::Length> &length) {
    return length && length->basis == model::Basis::Usual ? QObject::tr("Usual, not measured") : QString();
}

} // namespace

std::vector<PageViewModel::FieldSpec> KitchenPage::newUnitFields() {
    const auto typed = [](QString &into) {
        return [&into](Case &, const QString &value) -> Result<void> {
            into = value.trimmed();
            return {};
        };
    };
    return {
        {{.key = "units",
          .label = tr("Units in words, from the door clockwise"),
          .hint = tr("For example larder 50 cm 4 shelves, worktop, corner, wall cupboard left of the cooker "
                     "2 shelves")},
         {},
         {}},
        {{.key = "newKind",
          .kind = FieldKind::Choice,
          .label = tr("Kind of unit"),
          .choices = unitKinds().words()},
         [this] { return unitKinds().wordOf(m_new.kind); },
         [this](Case &, const QString &chosen) -> Result<void> {
             m_new.kind = unitKinds().valueOf(chosen).value_or(m_new.kind);
             return {};
         }},
        {{.key = "newName",
          .label = tr("Name of the unit"),
          .hint = tr("For example wall cupboard left of the cooker")},
         [this] { return m_new.name; },
         typed(m_new.name)},
        {{.key = "newArea",
          .kind = FieldKind::Choice,
          .label = tr("Stands at"),
          .hint = tr("The work area that it belongs to"),
          .choices = workAreas().words()},
         [this] { return workAreas().wordOf(m_new.area); },
         [this](Case &, const QString &chosen) -> Result<void> {
             m_new.area = workAreas().valueOf(chosen).value_or(m_new.area);
             return {};
         }},
        {{.key = "newWidth",
          .label = tr("Outer width"),
          .hint = tr("For example 60 cm; empty: the usual width")},
         [this] { return m_new.width; },
         [this](Case &, const QString &value) -> Result<void> {
             if (const auto length = lengthOrNone(value, longestCm); !length)
                 return tl::unexpected(length.error());
             m_new.width = value.trimmed();
             return {};
         }},
        {{.key = "newShelves",
          .kind = FieldKind::Number,
          .label = tr("How many shelves or drawers"),
          .hint = tr("1 to 12")},
         [this] { return m_new.shelves; },
         [this](Case &, const QString &value) -> Result<void> {
             if (const auto count = wholeNumber(value, 1, 12); !count)
                 return tl::unexpected(count.error());
             m_new.shelves = value.trimmed();
             return {};
         }},
    };
}

std::vector<PageViewModel::FieldSpec> KitchenPage::unitFields(const Id &id) {
    const auto unit = [this, id]() -> const Unit & {
        return *std::ranges::find(record().units, id, &Unit::id);
    };
    return {
        {{.key = "unitName", .label = tr("Name of the unit")},
         [unit] { return text(unit().name); },
         nameField(&Case::units, id)},
        {{.key = "unitKind",
          .kind = FieldKind::Choice,
          .label = tr("Kind of unit"),
          .choices = unitKinds().words()},
         [unit] { return unitKinds().wordOf(unit().kind); },
         choiceField(&Case::units, id, &Unit::kind, unitKinds())},
        {{.key = "unitArea",
          .kind = FieldKind::Choice,
          .label = tr("Stands at"),
          .choices = workAreas().words()},
         [unit] { return workAreas().wordOf(unit().area); },
         choiceField(&Case::units, id, &Unit::area, workAreas())},
        {{.key = "unitWidth", .label = tr("Outer width")},
         [unit] { return shown(unit().width); },
         lengthField(&Case::units, id, &Unit::width)},
        {{.key = "unitLock",
          .kind = FieldKind::YesNo,
          .label = tr("Can be locked"),
          .hint = tr("Not asked counts as no")},
         [unit] { return answerValue(unit().lockable); },
         [id](Case &r, const QString &chosen) -> Result<void> {
             for (auto &u : r.units)
                 if (u.id == id)
                     u.lockable = answerOf(chosen);
             return {};
         }},
        {{.key = "unitCorner",
          .kind = FieldKind::YesNo,
          .label = tr("Begins a new wall"),
          .hint = tr("The walk turns a corner to it")},
         [unit] { return yesNo(unit().corner); },
         [id](Case &r, const QString &chosen) -> Result<void> {
             for (auto &u : r.units)
                 if (u.id == id)
                     u.corner = isYes(chosen);
             return {};
         }},
    };
}

std::vector<PageViewModel::FieldSpec> KitchenPage::placeFields(const Id &id) {
    const auto place = [this, id]() -> const Place & {
        return *std::ranges::find(record().places, id, &Place::id);
    };
    const auto size = [&](const char *key, const QString &label,
                          std::optional<model::Length> Place::*member) -> FieldSpec {
        return {{.key = key, .label = label, .hint = usualHint(place().*member)},
                [place, member] { return shown(place().*member); },
                lengthField(&Case::places, id, member)};
    };
    return {
        {{.key = "placeName", .label = tr("Name of the place")},
         [place] { return text(place().name); },
         nameField(&Case::places, id)},
        size("placeWidth", tr("Width inside"), &Place::width),
        size("placeDepth", tr("Depth inside"), &Place::depth),
        size("placeClear", tr("Clear height"), &Place::clear),
        size("placeHeight", tr("Height above the floor"), &Place::height),
        {{.key = "placeStorage",
          .kind = FieldKind::Choice,
          .label = tr("Storage"),
          .choices = storages().words()},
         [place] { return storages().wordOf(place().storage); },
         choiceField(&Case::places, id, &Place::storage, storages())},
        {{.key = "placeLight",
          .kind = FieldKind::Choice,
          .label = tr("Light on it"),
          .hint = tr("Not asked counts as dim"),
          .choices = lights().words()},
         [place] { return lights().wordOf(place().light); },
         choiceField(&Case::places, id, &Place::light, lights())},
        {{.key = "placeOwn",
          .kind = FieldKind::Choice,
          .label = tr("The client's own place"),
          .hint = tr("For her private things: nothing of others stands there"),
          .choices = yesNoWords()},
         [place] { return yesNo(place().own); },
         [id](Case &r, const QString &chosen) -> Result<void> {
             for (auto &p : r.places)
                 if (p.id == id)
                     p.own = isYes(chosen);
             return {};
         }},
    };
}

} // namespace app
