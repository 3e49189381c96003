#include "reports/square_code.h"
#include "reports/writers.h"
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>

/// What is drawn is read back by a decoder that shares no code with the encoder (zbarimg of ZBar).
namespace {

using namespace reports;
using testing::HasSubstr;

struct Folder {
    std::filesystem::path path;
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "code-").string() + std::string(6, 'X');
        path = ::mkdtemp(name.data());
    }
    Folder(const Folder &) = delete;
    Folder &operator=(const Folder &) = delete;
    ~Folder() { std::filesystem::remove_all(path); }
};

std::string answerOf(const std::string &command) {
    std::string answer;
    std::array<char, 256> part{};
    FILE *pipe = popen(command.c_str(), "r");
    while (pipe && std::fgets(part.data(), part.size(), pipe))
        answer += part.data();
    if (pipe)
        pclose(pipe);
    return answer;
}

std::string readBack(const std::string &image) {
    std::string answer =
        answerOf("zbarimg --quiet --raw -Sdisable -Sqrcode.enable '" + image + "' 2>/dev/null");
    while (!answer.empty() && answer.back() == '\n')
        answer.pop_back();
    return answer;
}

/// The boxes as a picture, 6 dots a millimetre.
void paint(const Figure &figure, const std::string &file) {
    constexpr int dots = 6;
    const auto side = static_cast<std::size_t>(figure.width * dots);
    std::string pixels(side * side, '\xff');
    for (const Figure::Box &box : figure.boxes) {
        const auto at = [](double mm) { return static_cast<std::size_t>(std::lround(mm * dots)); };
        for (std::size_t y = at(box.y); y < at(box.y + box.height); ++y)
            for (std::size_t x = at(box.x); x < at(box.x + box.width); ++x)
                pixels[y * side + x] = '\0';
    }
    std::ofstream(file, std::ios::binary) << "P5\n" << side << ' ' << side << "\n255\n" << pixels;
}

class SquareCode : public testing::TestWithParam<std::string> {};
INSTANTIATE_TEST_SUITE_P(
    Texts, SquareCode,
    testing::Values("Rice", "Flour. Best before 4 March 2027.",
                    "Pasta. To prepare: boil 11 minutes in salted water. Contains cereals "
                    "containing gluten. May contain eggs. Not checked for soya.",
                    "Cr\u00e8me fra\u00eeche. Best before 4 March 2027.", "\u0141osos, \u017curek, \u00df",
                    std::string(151, 'x')));

TEST_P(SquareCode, isReadBackByAnotherProgram) {
    const Folder folder;
    const auto figure = squareCode("it", GetParam());
    ASSERT_TRUE(figure.has_value()) << figure.error().sentence;
    const std::string file = (folder.path / "code.pgm").string();
    paint(*figure, file);
    EXPECT_EQ(readBack(file), GetParam());
}

TEST_P(SquareCode, isReadBackFromThePrintedPage) {
    const Folder folder;
    Document document{.title = "Labels", .date = "2026-11-28"};
    document.blocks.emplace_back(Heading{1, plain("Labels")});
    document.blocks.emplace_back(*squareCode("it", GetParam()));
    const auto pdf = writePdf(document, PrintLayout{});
    ASSERT_TRUE(pdf.has_value()) << pdf.error().sentence;
    const std::string file = (folder.path / "page").string();
    std::ofstream(file + ".pdf", std::ios::binary) << std::string(pdf->begin(), pdf->end());
    answerOf("pdftoppm -r 200 -gray -singlefile '" + file + ".pdf' '" + file + "'");
    EXPECT_EQ(readBack(file + ".pgm"), GetParam());
}

/// ISO/IEC 18004: 17 + 4 modules a version; of byte mode at level Q version 1 holds 11 bytes, version 10 151.
/// Both sides have a quiet zone of 4 modules.
TEST(SquareCode, hasTheSizeOfTheStandard) {
    EXPECT_EQ(squareCode("it", std::string(11, 'x'))->width, 21 + 8);
    EXPECT_EQ(squareCode("it", std::string(12, 'x'))->width, 25 + 8);
    EXPECT_EQ(squareCode("it", std::string(151, 'x'))->width, 57 + 8);
    EXPECT_TRUE(squareCode("it", "Rice")->trueToScale);
    EXPECT_EQ(squareCode("it", "\u00e8" + std::string(136, 'x'))->width, 57 + 8); // says that it is UTF-8
    EXPECT_FALSE(squareCode("it", "\u00e8" + std::string(149, 'x')).has_value());
}

TEST(SquareCode, thatCannotBeIsToldAndNotCut) {
    EXPECT_THAT(squareCode("rice", std::string(152, 'x')).error().sentence, HasSubstr("rice"));
    EXPECT_FALSE(squareCode("rice", "").has_value());
}

} // namespace
