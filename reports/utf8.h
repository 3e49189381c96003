#pragma once
#include <string>
#include <string_view>

namespace reports {

[[nodiscard]] bool isUtf8(std::string_view bytes);
[[nodiscard]] std::u32string codePoints(std::string_view bytes);
[[nodiscard]] std::string toUtf8(std::u32string_view text);
/// Characters for a message: each once, at most eight, as "☎ (U+260E), ż (U+017C) and 3 more".
[[nodiscard]] std::string named(const std::u32string &characters);

} // namespace reports
