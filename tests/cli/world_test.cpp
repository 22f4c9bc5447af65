// SPDX-License-Identifier: MIT
// What depends on the world around the program, in invented worlds.
#include "cli/colour.hpp"
#include "cli/installed.hpp"
#include "process.hpp"

#include <doctest/doctest.h>

#include <map>

using namespace pelt;
using namespace pelt::cli;

namespace {

using Variables = std::map<std::string, std::string>;

World world_with(Variables variables) {
    World world;
    world.variable = [variables](const char* name) {
        const auto found = variables.find(name);
        return found == variables.end() ? std::nullopt : std::optional(found->second);
    };
    return world;
}

bool coloured(const std::string& option, const Variables& variables, bool terminal = true) {
    return wants_colour(option, world_with(variables), terminal);
}

} // namespace

TEST_CASE("the option stands above everything") {
    CHECK(coloured("always", {{"NO_COLOR", "1"}, {"TERM", "dumb"}}, false));
    CHECK_FALSE(coloured("never", {{"FORCE_COLOR", "1"}, {"TERM", "xterm"}}));
}

TEST_CASE("NO_COLOR counts when it is not empty, whatever it says (no-color.org)") {
    CHECK_FALSE(coloured("auto", {{"NO_COLOR", "1"}, {"TERM", "xterm"}}));
    CHECK_FALSE(coloured("auto", {{"NO_COLOR", "0"}, {"TERM", "xterm"}}));
    CHECK_FALSE(coloured("auto", {{"NO_COLOR", "1"}, {"FORCE_COLOR", "1"}, {"TERM", "xterm"}}));
    CHECK(coloured("auto", {{"NO_COLOR", ""}, {"TERM", "xterm"}}));
}

TEST_CASE("color can be forced where there is no terminal") {
    CHECK(coloured("auto", {{"FORCE_COLOR", "1"}}, false));
    CHECK(coloured("auto", {{"CLICOLOR_FORCE", "1"}}, false));
    CHECK_FALSE(coloured("auto", {{"FORCE_COLOR", "0"}, {"TERM", "xterm"}}, false));
    CHECK_FALSE(coloured("auto", {{"FORCE_COLOR", ""}, {"TERM", "xterm"}}, false));
}

TEST_CASE("otherwise a terminal that is not dumb gets color") {
    CHECK(coloured("auto", {{"TERM", "xterm"}}));
    CHECK_FALSE(coloured("auto", {{"TERM", "xterm"}}, false));
    CHECK_FALSE(coloured("auto", {{"TERM", "dumb"}}));
    CHECK_FALSE(coloured("auto", {}));
}

TEST_CASE("the locale says whether a terminal takes UTF-8 (POSIX: LC_ALL, LC_CTYPE, LANG)") {
    CHECK(speaks_utf8(world_with({{"LANG", "de_DE.UTF-8"}})));
    CHECK(speaks_utf8(world_with({{"LC_ALL", "C.utf8"}, {"LANG", "C"}})));
    CHECK_FALSE(speaks_utf8(world_with({{"LC_ALL", "C"}, {"LANG", "de_DE.UTF-8"}})));
    CHECK(speaks_utf8(world_with({{"LC_ALL", ""}, {"LC_CTYPE", "en_US.UTF-8"}, {"LANG", "C"}})));
    CHECK_FALSE(speaks_utf8(world_with({{"LANG", "de_DE.ISO-8859-1"}})));
    CHECK_FALSE(speaks_utf8(world_with({})));
}

TEST_CASE("installed files are looked for in PELT_PATH, then beside the program") {
    World world = world_with({{"PELT_PATH", ":/one::/two:"}});
    world.folder_of_program = "/usr/local/bin";
    CHECK(data_folders(world) == std::vector<std::string>{"/one", "/two", "/usr/local/share/pelt",
                                                          "/usr/local/bin/share/pelt"});
    CHECK(data_folders(world_with({})).empty());
}

TEST_CASE("a name finds the file that comes first, vehicles and films apart") {
    const support::ScratchFolder folder;
    folder.write("a/vehicles/van.yaml", "vehicle: first\n");
    folder.write("b/vehicles/van.yaml", "vehicle: second\n");
    folder.write("b/vehicles/car.yaml", "vehicle: car\n");
    folder.write("b/vehicles/notes.txt", "no vehicle\n");
    folder.write("b/films/van.yaml", "film: of the same name\n");
    const std::string a = folder.path() + "/a";
    const std::string b = folder.path() + "/b";
    const World world = world_with({{"PELT_PATH", a + ":" + b}});
    std::vector<std::string> names;
    for (const InstalledFile& file : installed_files(world))
        names.push_back(file.path);
    CHECK(names == std::vector<std::string>{b + "/vehicles/car.yaml", a + "/vehicles/van.yaml",
                                            b + "/films/van.yaml"});
    Faults faults;
    CHECK(path_of("van", Wanted::vehicle, world, faults) == a + "/vehicles/van.yaml");
    CHECK(path_of("van", Wanted::film, world, faults) == b + "/films/van.yaml");
    CHECK(path_of("van", Wanted::either, world, faults) == a + "/vehicles/van.yaml");
    CHECK(path_of("-", Wanted::film, world, faults) == "-");
    CHECK(path_of("./van", Wanted::film, world, faults) == "./van");
    CHECK(faults.empty());
    path_of("cat", Wanted::vehicle, world, faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].severity == Severity::access);
    CHECK(faults[0].remedy.find("'car'") != std::string::npos);
}
