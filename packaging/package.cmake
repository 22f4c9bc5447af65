# SPDX-License-Identifier: MIT
# What cpack makes: a package for Debian (-G DEB) and an archive of the sources (-G TGZ).
set(PELT_PACKAGER "The pelt developers <pelt@pelt.invalid>" CACHE STRING
  "Who answers for the package, as 'Name <address>'")

file(READ ${PROJECT_SOURCE_DIR}/LICENSE PELT_LICENSE)
string(REGEX REPLACE "^SPDX[^\n]*\n\nCopyright[^\n]*\n\n" "" PELT_LICENSE "${PELT_LICENSE}")
string(REGEX REPLACE "\n+$" "" PELT_LICENSE "${PELT_LICENSE}")
string(REGEX REPLACE "\n\n" "\n.\n" PELT_LICENSE "${PELT_LICENSE}")
string(REGEX REPLACE "\n" "\n " PELT_LICENSE "${PELT_LICENSE}")
configure_file(packaging/copyright.in ${PROJECT_BINARY_DIR}/packaging/copyright @ONLY)

set(CPACK_PACKAGE_VENDOR "the pelt developers")
set(CPACK_PACKAGE_CONTACT "${PELT_PACKAGER}")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "film to order for a vehicle wrap, and how to cut it")
set(CPACK_RESOURCE_FILE_LICENSE ${PROJECT_SOURCE_DIR}/LICENSE)
set(CPACK_PACKAGE_FILE_NAME ${PROJECT_NAME}-${PROJECT_VERSION})
set(CPACK_GENERATOR DEB)
set(CPACK_VERBATIM_VARIABLES ON)

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION utils)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS fonts-dejavu-core) # sheets on paper are set in it
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_DEBIAN_COMPRESSION_TYPE xz)
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"pelt reads the measures of a vehicle's panels and the data of a film, lays
every panel out flat with tucks and margins, and fits the pieces onto the
roll. It prints the length to order, the waste and a cut sheet, as text, as
a page to print, as a drawing or as a table for a spreadsheet. Every layout
is checked by a second calculation before it is printed.
.
The vehicles and films that come with it are invented, to learn from.")

# Read by the two scripts below.
set(CPACK_PELT_TOP ${PROJECT_SOURCE_DIR})
set(CPACK_PELT_PACKAGING ${PROJECT_BINARY_DIR}/packaging)
set(CPACK_PELT_VERSION_DATE ${PELT_VERSION_DATE})
set(CPACK_PROJECT_CONFIG_FILE ${PROJECT_SOURCE_DIR}/packaging/each_generator.cmake)
set(CPACK_PRE_BUILD_SCRIPTS ${PROJECT_SOURCE_DIR}/packaging/staging.cmake)
set(CPACK_POST_BUILD_SCRIPTS ${PROJECT_SOURCE_DIR}/packaging/repack.cmake)
include(CPack)
