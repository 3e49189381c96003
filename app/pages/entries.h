#pragma once
#include "app/viewmodels/form_model.h"
#include "model/case.h"
#include "model/result.h"
#include <QCoreApplication>
#include <array>
#include <string>

/// Small pieces that pages share: words for answers and choices, and the reading of common fields.
namespace app {

[[nodiscard]] QString answerValue(model::Answer answer);
[[nodiscard]] model::Answer answerOf(const QString &value);
/// "1 thing", "4 things": `many` holds %1 for the number, `one` stands as it is.
[[nodiscard]] QString counted(std::size_t n, const QString &one, const QString &many);

/// For facts that are either so or not, and are never "not asked".
[[nodiscard]] QStringList yesNoWords();
[[nodiscard]] QString yesNo(bool value);
[[nodiscard]] bool isYes(const QString &word);

/// A whole number within bounds. Fails with a sentence that names them.
[[nodiscard]] model::Result<int> wholeNumber(const QString &typed, int least, int most);
/// A number within bounds, with comma or point. Fails with a sentence that names them; `unit` may follow the
/// number.
[[nodiscard]] model::Result<double> number(const QString &typed, double least, double most,
                                           const QString &unit);
/// A length, or none for an empty field.
[[nodiscard]] model::Result<std::optional<model::Length>> lengthOrNone(const QString &typed,
                                                                       double longestCm);
[[nodiscard]] model::Result<std::optional<model::Date>> dateOrNone(const QString &typed);
[[nodiscard]] QString shown(const std::optional<model::Length> &length);
[[nodiscard]] QString shown(const std::optional<model::Date> &date);

/// A closed choice: words beside values, in the order shown.
template<class T> struct Choices {
    std::vector<std::pair<QString, T>> list;
    [[nodiscard]] QStringList words() const {
        QStringList all;
        for (const auto &[word, value] : list)
            all << word;
        return all;
    }
    [[nodiscard]] QString wordOf(const T &value) const {
        for (const auto &[word, v] : list)
            if (v == value)
                return word;
        return {};
    }
    [[nodiscard]] std::optional<T> valueOf(const QString &word) const {
        for (const auto &[w, value] : list)
            if (w == word)
                return value;
        return std::nullopt;
    }
};

[[nodiscard]] const Choices<model::UnitKind> &unitKinds();
[[nodiscard]] const Choices<model::WorkArea> &workAreas();
[[nodiscard]] const Choices<model::Storage> &storages();
[[nodiscard]] const Choices<model::Light> &lights();
[[nodiscard]] const Choices<model::BrailleGrade> &brailleGrades();
[[nodiscard]] const Choices<model::Klass> &klasses();
[[nodiscard]] const Choices<model::Shape> &shapes();
[[nodiscard]] const Choices<model::Surface> &surfaces();

} // namespace app
