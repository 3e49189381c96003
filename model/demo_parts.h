#pragma once
#include "model/case.h"
#include <string>
#include <vector>

/// Rows from which the invented cases are made.
namespace model::demo {

struct UnitRow {
    const char *name;
    UnitKind kind{};
    WorkArea area = WorkArea::None;
    double width = 0; // cm; 0: not measured
    const char *colour = "";
    Answer lockable = Answer::No;
};

enum class Form { Shelf, Drawer, Counter };

struct PlaceRow {
    int unit = 0;
    const char *name;
    Form form{};
    double width = 0, depth = 0, clear = 0, height = 0; // cm; 0: not measured
    Light light = Light::Fair;
    Storage storage = Storage::Dry;
    const char *contents = ""; // as typed on the contents line
};

struct MeasurementRow {
    Test test{};
    Side side = Side::NotStated;
    const char *typed = "";
    const char *distance = "";
    const char *method = "";
    const char *notTestedBecause = "";
    const char *finger = "";
    const char *chart = "";
};

struct AnswerRow {
    SafetyQuestion question{};
    Answer answer{};
    const char *note = "";
};

struct RatingRow {
    int goal = 0, visit = 0; // from 0
    int level = 0;
    const char *evidence = "";
};

/// A case marked invented, its parts with readable ids "demo-NAME-...".
[[nodiscard]] Case startCase(const std::string &shortName, const std::string &name, Date born);
/// Units, places and things; what stands where now is what the contents lines say.
void addKitchen(Case &record, const std::vector<UnitRow> &units, const std::vector<PlaceRow> &places);
void addMeasurements(Case &record, const std::vector<MeasurementRow> &rows, Date date);
/// As typed on the appliance page, with the heat that was measured beside the controls; 0: not measured.
void addAppliance(Case &record, const std::string &line, double celsius = 0);
void addAnswers(Case &record, const std::vector<AnswerRow> &rows, Date date);
void addGoal(Case &record, const std::string &sentence, const std::array<std::string, 5> &levels, Date agreed,
             Date review);
void addRatings(Case &record, const std::vector<RatingRow> &rows);
/// A closed visit, numbered after those there are.
void addVisit(Case &record, Date date, const std::string &note, const std::string &carriedOver);

/// The thing of that name, for a small change; the name must be there.
[[nodiscard]] Thing &thingNamed(Case &record, const std::string &name);

[[nodiscard]] constexpr Date day(int year, unsigned month, unsigned dayOfMonth) {
    return Date{std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{dayOfMonth}};
}

} // namespace model::demo
