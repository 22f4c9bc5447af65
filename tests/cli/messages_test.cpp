// SPDX-License-Identifier: MIT
#include "cli/messages.hpp"

#include <doctest/doctest.h>

using namespace pelt;
using namespace pelt::cli;

namespace {

struct Heard {
    std::string text;
    Messages messages(Loudness loudness, bool colour = false) {
        return {[this](std::string_view more) { text += more; }, loudness, colour};
    }
};

Fault fault_in_file(Severity severity) {
    auto source = std::make_shared<Source>();
    source->name = "van.yaml";
    source->text = "vehicle: Van\npanels:\n  hood: {siez: [1200, 800]}\n";
    return {severity, {source, 3, 10}, "hood", "unknown key 'siez'", "did you mean 'size'?"};
}

Fault fault_of_the_job(Severity severity) {
    return {severity, {}, "", "nothing is left to cut", ""};
}

} // namespace

TEST_CASE("a fault shows its place, its panel, the line and a caret") {
    Heard heard;
    heard.messages({}).tell(fault_in_file(Severity::file));
    CHECK(heard.text == "van.yaml:3:10: panel 'hood': unknown key 'siez'; did you mean 'size'?\n"
                        "    hood: {siez: [1200, 800]}\n"
                        "           ^\n");
}

TEST_CASE("a fault without a place begins with the program's name") {
    Heard heard;
    heard.messages({}).tell(fault_of_the_job(Severity::usage));
    CHECK(heard.text == "pelt: nothing is left to cut\n");
}

TEST_CASE("warnings and notes say what they are, behind the place") {
    Heard heard;
    const Messages messages = heard.messages({.quiet = false, .verbose = 1});
    messages.tell(fault_of_the_job(Severity::warning));
    messages.tell(fault_of_the_job(Severity::note));
    CHECK(heard.text ==
          "pelt: warning: nothing is left to cut\npelt: note: nothing is left to cut\n");
    heard.text.clear();
    messages.tell(fault_in_file(Severity::warning));
    CHECK(heard.text.find("van.yaml:3:10: warning: panel 'hood': unknown") == 0);
}

TEST_CASE("quiet drops warnings and news, and never errors") {
    Heard heard;
    const Messages messages = heard.messages({.quiet = true, .verbose = 2});
    messages.tell(fault_of_the_job(Severity::warning));
    messages.tell(fault_of_the_job(Severity::note));
    messages.say("wrote 'x'");
    CHECK(heard.text == "");
    for (const Severity severity :
         {Severity::usage, Severity::file, Severity::access, Severity::job})
        messages.tell(fault_of_the_job(severity));
    CHECK(heard.text.size() == 4 * std::string("pelt: nothing is left to cut\n").size());
}

TEST_CASE("notes are shown when verbose only") {
    Heard heard;
    heard.messages({}).tell(fault_of_the_job(Severity::note));
    CHECK(heard.text == "");
    heard.messages({}).say("wrote 'x'");
    CHECK(heard.text == "pelt: wrote 'x'\n");
}

TEST_CASE("color adds escapes around the same text") {
    Heard plain;
    Heard coloured;
    for (const Severity severity : {Severity::warning, Severity::file}) {
        plain.messages({}).tell(fault_in_file(severity));
        coloured.messages({}, true).tell(fault_in_file(severity));
    }
    std::string without;
    bool inside = false;
    for (const char c : coloured.text) {
        inside = inside || c == '\x1b';
        if (!inside)
            without += c;
        if (inside && c == 'm')
            inside = false;
    }
    CHECK(without == plain.text);
    CHECK(coloured.text != plain.text);
}

TEST_CASE("faults that are not listed are counted") {
    Heard heard;
    heard.messages({}).tell_unlisted("van.yaml", 0);
    CHECK(heard.text == "");
    heard.messages({.quiet = true, .verbose = 0}).tell_unlisted("van.yaml", 20);
    CHECK(heard.text == "van.yaml: and 20 more like these\n");
}
