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

// XDG Base Directory Specification 0.8, "Environment variables" and "Basics": $HOME/.local/share
// where XDG_DATA_HOME is unset or empty, and relative paths are invalid and to be ignored.
TEST_CASE("the user's own folder is where XDG says") {
    CHECK(own_folder(world_with({{"HOME", "/home/a"}})) == "/home/a/.local/share/pelt");
    CHECK(own_folder(world_with({{"HOME", "/home/a"}, {"XDG_DATA_HOME", "/data"}})) ==
          "/data/pelt");
    CHECK(own_folder(world_with({{"HOME", "/home/a"}, {"XDG_DATA_HOME", ""}})) ==
          "/home/a/.local/share/pelt");
    CHECK(own_folder(world_with({{"HOME", "/home/a"}, {"XDG_DATA_HOME", "data"}})) ==
          "/home/a/.local/share/pelt");
    CHECK(own_folder(world_with({{"HOME", "home"}})) == std::nullopt);
    CHECK(own_folder(world_with({})) == std::nullopt);
}

TEST_CASE("the user's own folder comes behind PELT_PATH and before the installed ones") {
    World world = world_with({{"PELT_PATH", "/one"}, {"XDG_DATA_HOME", "/data"}});
    world.folder_of_program = "/usr/bin";
    CHECK(data_folders(world) ==
          std::vector<std::string>{"/one", "/data/pelt", "/usr/share/pelt", "/usr/bin/share/pelt"});
    // Installed by hand below one's home: then those files are the installed ones.
    world = world_with({{"HOME", "/home/a"}});
    world.folder_of_program = "/home/a/.local/bin";
    CHECK(own_folder(world) == std::nullopt);
}

TEST_CASE(
    "a name that the user's own and an installed file have is a fault, unless PELT_PATH has it") {
    const support::ScratchFolder folder;
    folder.write("data/pelt/vehicles/van.yaml", "vehicle: mine\n");
    folder.write("data/pelt/vehicles/bus.yaml", "vehicle: mine\n");
    folder.write("share/pelt/vehicles/van.yaml", "vehicle: installed\n");
    folder.write("share/pelt/films/bus.yaml", "film: no vehicle\n");
    folder.write("path/vehicles/van.yaml", "vehicle: by path\n");
    World world = world_with({{"XDG_DATA_HOME", folder.path() + "/data"}});
    world.folder_of_program = folder.path() + "/bin";
    Faults faults;
    path_of("bus", Wanted::vehicle, world, faults);
    CHECK(faults.empty());
    path_of("van", Wanted::vehicle, world, faults);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].severity == Severity::access);
    CHECK(faults[0].what.find(folder.path() + "/data/pelt/vehicles/van.yaml") != std::string::npos);
    CHECK(faults[0].what.find(folder.path() + "/share/pelt/vehicles/van.yaml") !=
          std::string::npos);
    CHECK_FALSE(faults[0].remedy.empty());
    World with_path = world_with(
        {{"XDG_DATA_HOME", folder.path() + "/data"}, {"PELT_PATH", folder.path() + "/path"}});
    with_path.folder_of_program = world.folder_of_program;
    faults.clear();
    CHECK(path_of("van", Wanted::vehicle, with_path, faults) ==
          folder.path() + "/path/vehicles/van.yaml");
    CHECK(faults.empty());
}
