// SPDX-License-Identifier: MIT
// How a program of the command line behaves: streams, statuses, pipes, terminals, environment.
// POSIX.1-2017 XBD chapter 12 (operands, "-", "--") and XCU 1.4 (diagnostics to standard error),
// the GNU coding standards (--help, --version), and no-color.org.
#include "program.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>

using namespace pelt;
using cli_test::Program;
using Words = std::vector<std::string>;

namespace {

const Words job{"cut", "van.yaml", "film.yaml", "--format", "json"};

Words job_and(const Words& more) {
    Words words = job;
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

bool has_escape(const std::string& text) {
    return text.find('\x1b') != std::string::npos;
}

} // namespace

TEST_CASE("help goes to standard output and is a success") {
    const Program pelt;
    for (const Words& words : {Words{"--help"}, Words{"cut", "--help"}, Words{"check", "-h"}}) {
        const auto result = pelt(words);
        CHECK(result.status == 0);
        CHECK(result.errors == "");
        CHECK(result.output.find("Usage: pelt") == 0);
    }
}

TEST_CASE("the first line of --version is the name and the version") {
    const auto result = Program()({"--version"});
    CHECK(result.status == 0);
    CHECK(result.errors == "");
    CHECK(result.output.substr(0, result.output.find('\n')) == "pelt " PELT_VERSION_TEXT);
}

TEST_CASE("a wrong command line prints nothing on standard output") {
    const Program pelt;
    for (const Words& words : {Words{}, Words{"nonsense"}, Words{"cut", "--nope"}, Words{"cut"}}) {
        const auto result = pelt(words);
        CHECK(result.status == 2);
        CHECK(result.output == "");
        CHECK(result.errors != "");
    }
}

TEST_CASE("a job prints one JSON document and nothing else") {
    const auto result = Program()(job);
    CHECK(result.status == 0);
    CHECK(result.errors == "");
    CHECK(result.output.back() == '\n');
    CHECK(nlohmann::json::parse(result.output).at("schema") == "pelt.cut/1");
}

TEST_CASE("every format goes to standard output alone, and ends with a newline") {
    const Program pelt;
    for (const char* format : {"table", "csv", "json", "markdown", "svg"}) {
        CAPTURE(format);
        const auto result = pelt({"cut", "van.yaml", "film.yaml", "--format", format});
        CHECK(result.status == 0);
        CHECK(result.errors == "");
        REQUIRE(result.output != "");
        CHECK(result.output.back() == '\n');
        CHECK_FALSE(has_escape(result.output));
    }
}

TEST_CASE("a file holds the format that its ending says") {
    const Program pelt;
    const std::map<std::string, std::string> endings{
        {"txt", "table"}, {"csv", "csv"}, {"json", "json"}, {"md", "markdown"}, {"svg", "svg"}};
    for (const auto& [ending, format] : endings) {
        const auto& told_ending = ending;
        CAPTURE(told_ending);
        const std::string name = "sheet." + ending;
        CHECK(pelt({"cut", "van.yaml", "film.yaml", "-q", "-o", name}).status == 0);
        CHECK(pelt.file(name) == pelt({"cut", "van.yaml", "film.yaml", "--format", format}).output);
    }
}

TEST_CASE("CSV and JSON are in millimeters whatever the units, other formats follow them") {
    const Program pelt;
    for (const char* format : {"csv", "json"})
        CHECK(pelt({"cut", "van.yaml", "film.yaml", "--format", format, "--units", "in"}).output ==
              pelt({"cut", "van.yaml", "film.yaml", "--format", format}).output);
    CHECK(pelt({"cut", "van.yaml", "film.yaml", "--units", "in"}).output !=
          pelt({"cut", "van.yaml", "film.yaml"}).output);
}

std::string shown_in_terminal(const Program& pelt, std::vector<std::string> words) {
    words.insert(words.end(), {"--color", "never"});
    std::string shown = pelt.in_terminal(std::move(words)).output;
    shown.erase(std::remove(shown.begin(), shown.end(), '\r'), shown.end());
    return shown;
}

TEST_CASE("a table is no wider than its terminal, and 80 columns elsewhere") {
    Program pelt;
    pelt.environment["LC_ALL"] = "C.UTF-8";
    const std::string table = pelt({"cut", "van.yaml", "film.yaml"}).output;
    // A pseudo-terminal that nobody gave a size has none, so 80 columns hold there too. It has a
    // drawing of the roll besides.
    const std::string shown = shown_in_terminal(pelt, {"cut", "van.yaml", "film.yaml"});
    const std::size_t drawing = shown.find("  ┌");
    const std::size_t after = shown.find("\nIN THE ORDER OF LAYING");
    REQUIRE(drawing < after);
    REQUIRE(after != std::string::npos);
    // At the end it has the order once more, and what to print it by.
    CHECK(shown.substr(0, drawing) + shown.substr(after) ==
          table + "1.86 m × 1524 mm. To cut by: -o sheet.pdf\n");
}

TEST_CASE("a terminal whose locale has no UTF-8 gets our signs in ASCII, a pipe never") {
    const Program pelt; // LC_ALL=C
    const auto is_ascii = [](const std::string& text) {
        return std::all_of(text.begin(), text.end(), [](char c) { return c >= 0; });
    };
    CHECK(is_ascii(shown_in_terminal(pelt, {"cut", "van.yaml", "film.yaml"})));
    CHECK_FALSE(is_ascii(pelt({"cut", "van.yaml", "film.yaml"}).output));
}

TEST_CASE("the drawing is in color where color is wanted") {
    const Program pelt;
    pelt.folder().write("sides.yaml", "vehicle: Two doors\npanels:\n"
                                      "  door: {sides: both, size: [900, 700], edges: none}\n");
    CHECK(has_escape(pelt.in_terminal({"cut", "sides.yaml", "film.yaml"}).output));
    CHECK_FALSE(has_escape(
        pelt.in_terminal({"cut", "sides.yaml", "film.yaml", "--color", "never"}).output));
}

TEST_CASE("a file that is missing is named, status 4") {
    const auto result = Program()({"cut", "./none.yaml", "film.yaml"});
    CHECK(result.status == 4);
    CHECK(result.output == "");
    CHECK(result.errors.find("./none.yaml") != std::string::npos);
}

TEST_CASE("a file that may not be read is status 4") {
    const Program pelt;
    pelt.folder().write("closed.yaml", cli_test::small_van);
    const std::string path = pelt.folder().path() + "/closed.yaml";
    REQUIRE(::chmod(path.c_str(), 0) == 0);
    REQUIRE(::chmod(pelt.folder().path().c_str(), 0755) == 0);
    // The superuser may read everything, so then someone else has to try.
    const std::string line =
        ::geteuid() == 0 ? "setpriv --reuid=65534 --clear-groups pelt check " : "pelt check ";
    const auto result = pelt.shell(line + path);
    CHECK(result.status == 4);
    CHECK(result.errors.find(path) != std::string::npos);
}

TEST_CASE("a full device is status 4, whatever is printed") {
    const Program pelt;
    for (const char* line :
         {"pelt cut van.yaml film.yaml >/dev/full", "pelt --help >/dev/full",
          "pelt --version >/dev/full", "pelt check van.yaml >/dev/full", "pelt list >/dev/full"}) {
        CAPTURE(line);
        const auto result = pelt.shell(line);
        CHECK(result.status == 4);
        CHECK(result.errors.find("pelt: standard output cannot be written") == 0);
    }
    CHECK(pelt(job_and({"-o", "/dev/full"})).status == 4);
}

TEST_CASE("a closed standard output is status 4") {
    CHECK(Program().shell("pelt --help >&-").status == 4);
}

TEST_CASE("a pipe that is closed early ends the program without a word") {
    const Program pelt;
    // true never reads; the sleep lets it close the pipe first.
    for (const char* line : {"{ sleep 0.2; pelt --help; echo $? >&2; } | true",
                             "{ trap '' PIPE; sleep 0.2; pelt --help; echo $? >&2; } | true"}) {
        CAPTURE(line);
        const auto result = pelt.shell(line);
        CHECK(result.errors == std::to_string(128 + SIGPIPE) + "\n");
    }
}

TEST_CASE("nothing is colored where there is no terminal") {
    const Program pelt;
    CHECK_FALSE(has_escape(pelt({"cot"}).errors));
    CHECK_FALSE(has_escape(pelt(job).output));
    CHECK(has_escape(pelt({"--color=always", "cot"}).errors));
    CHECK(has_escape(pelt({"check", "none", "--color", "always"}).errors));
}

TEST_CASE("messages on a terminal are colored unless the user says otherwise") {
    Program pelt;
    CHECK(has_escape(pelt.in_terminal({"check", "none"}).errors));
    CHECK_FALSE(has_escape(pelt.in_terminal({"check", "none", "--color=never"}).errors));
    pelt.environment["NO_COLOR"] = "1";
    CHECK_FALSE(has_escape(pelt.in_terminal({"check", "none"}).errors));
    pelt.environment["NO_COLOR"] = "";
    CHECK(has_escape(pelt.in_terminal({"check", "none"}).errors));
    pelt.environment["TERM"] = "dumb";
    CHECK_FALSE(has_escape(pelt.in_terminal({"check", "none"}).errors));
}

TEST_CASE("JSON is the same in a terminal, in any locale, time zone and color") {
    Program pelt;
    const std::string plain = pelt(job).output;
    CHECK(pelt(job).output == plain);
    for (const auto& [name, value] :
         std::map<std::string, std::string>{{"LC_ALL", "de_DE.UTF-8"},
                                            {"TZ", "Asia/Kathmandu"},
                                            {"FORCE_COLOR", "1"},
                                            {"COLUMNS", "20"},
                                            {"SOURCE_DATE_EPOCH", "86400"}}) {
        const auto& told_name = name;
        CAPTURE(told_name);
        const auto before = pelt.environment;
        pelt.environment[name] = value;
        CHECK(pelt(job).output == plain);
        pelt.environment = before;
    }
    std::string shown = pelt.in_terminal(job).output;
    // A terminal gets a carriage return before every line feed (termios ONLCR).
    shown.erase(std::remove(shown.begin(), shown.end(), '\r'), shown.end());
    CHECK(shown == plain);
}

TEST_CASE("quiet says nothing but errors") {
    const Program pelt;
    CHECK(pelt(job_and({"-q", "-o", "sheet.json"})).errors == "");
    CHECK(pelt(job_and({"-o", "sheet.json"})).errors == "pelt: wrote 'sheet.json'\n");
    CHECK(pelt({"-q", "check", "none"}).errors != "");
}

TEST_CASE("the developer's log goes to standard error, at -vv only") {
    const Program pelt;
    const std::string plain = pelt(job).output;
    CHECK(pelt(job_and({"-v"})).errors.find("debug:") == std::string::npos);
    const auto result = pelt(job_and({"-vv"}));
    CHECK(result.errors.find("debug:") != std::string::npos);
    CHECK(result.output == plain);
}
