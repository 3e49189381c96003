#pragma once
#include <QString>
#include <memory>

class QTranslator;

/// The language of the window: texts of the window and sentences of `model` come from Qt's translation files;
/// what is English is shown as it is written, or with American spelling and units.
namespace app {

/// The languages on offer, by their tags: "en_GB", "en_US".
[[nodiscard]] QStringList languages();
/// The tag that fits the desktop's language best.
[[nodiscard]] QString languageOf(const QString &desktop);
/// What the window's texts are in that language, for QCoreApplication::installTranslator; null for the one in
/// which they are written, or one that is not on offer.
[[nodiscard]] std::unique_ptr<QTranslator> translatorFor(const QString &language);

/// Sentences of `model` are said by the translations of the window from now on, or as they are written.
void translateModel(bool translate);

/// Sentences of `model` show American spelling, and customary units as well, from now on: "80 cm (31.5 in)".
void useAmericanWords(bool use);
/// The sentence as it is, or in American spelling, with lengths, weights and temperatures in customary units
/// behind the metric ones. 1 in is 2.54 cm, 1 lb 0.45359237 kg, exactly (international yard and pound, 1959).
[[nodiscard]] QString localWords(const QString &sentence);

} // namespace app
