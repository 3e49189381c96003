#pragma once
#include "model/contents.h"
#include "model/lexicon.h"

/// Things that were described once and are known from then on, on this computer. They say nothing of any
/// client: a name, and what such a thing usually is.
namespace model {

/// True if the name of this thing would be asked about the next time, although all of it is known now.
[[nodiscard]] bool isNewWord(const Thing &thing, const Lexicon &lexicon);
/// The thing as one that is usual from now on: every fact to be confirmed, nothing of where it stood.
[[nodiscard]] CatalogueThing ownThing(const Thing &thing);
/// Adds a thing, in the place of one of the same name.
void addOwnThing(std::vector<CatalogueThing> &own, CatalogueThing thing);

/// As text for the settings of the store, and back. Fails with DamagedDatabase.
[[nodiscard]] std::string ownThingsText(const std::vector<CatalogueThing> &own);
[[nodiscard]] Result<std::vector<CatalogueThing>> ownThingsFrom(const std::string &text);

} // namespace model
