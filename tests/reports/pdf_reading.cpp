#include "pdf_reading.h"
#include "reports/writers.h"
#include <array>
#include <cstdio>
#include <cstdlib>
#include <gtest/gtest.h>
#include <sstream>
#include <unistd.h>

namespace pdf_reading {

namespace fs = std::filesystem;

namespace {

bool isPageNumber(const std::string &line) {
    int page = 0, count = 0, length = 0;
    return std::sscanf(line.c_str(), "Page %d of %d%n", &page, &count, &length) == 2 &&
           std::size_t(length) == line.size();
}

} // namespace

std::string output(std::string command, const std::string &pdf) {
    std::string name = (fs::temp_directory_path() / "pdf-").string() + std::string(6, 'X');
    const fs::path folder = ::mkdtemp(name.data());
    EXPECT_TRUE(reports::writeFile(folder / "paper.pdf", pdf));
    command.replace(command.find("PDF"), 3, (folder / "paper.pdf").string());
    std::string text;
    if (FILE *pipe = ::popen(command.c_str(), "r")) {
        std::array<char, 4096> buffer{};
        while (const std::size_t count = std::fread(buffer.data(), 1, buffer.size(), pipe))
            text.append(buffer.data(), count);
        EXPECT_EQ(::pclose(pipe), 0) << command << "\n" << text;
    }
    fs::remove_all(folder);
    return text;
}

std::string collapsed(const std::string &text) {
    std::istringstream stream(text);
    std::string all;
    for (std::string word; stream >> word;)
        all += (all.empty() ? "" : " ") + word;
    return all;
}

std::string words(const std::string &pdf) {
    // In the order of the content: the guesses about columns go wrong for lines of one letter.
    std::istringstream lines(output("pdftotext -raw PDF -", pdf));
    std::string text;
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with('\f'))
            line.erase(0, 1);
        if (!isPageNumber(line))
            text += line + '\n';
    }
    return collapsed(text);
}

} // namespace pdf_reading
