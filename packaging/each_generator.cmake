# SPDX-License-Identifier: MIT
# cpack reads this for every package that it makes.

# Dates inside a package are that of the version, so that anyone's package has the same bytes.
# SOURCE_DATE_EPOCH (reproducible-builds.org) stands above it.
if(NOT DEFINED ENV{SOURCE_DATE_EPOCH})
  execute_process(COMMAND date -u -d ${CPACK_PELT_VERSION_DATE} +%s OUTPUT_VARIABLE epoch
    OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
  set(ENV{SOURCE_DATE_EPOCH} ${epoch})
endif()

if(CPACK_GENERATOR STREQUAL "DEB")
  set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
  set(CPACK_STRIP_FILES ON)
  set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
else() # an archive: of the sources, not of what was built
  set(CPACK_INSTALL_CMAKE_PROJECTS "")
  set(CPACK_INSTALLED_DIRECTORIES ${CPACK_PELT_TOP} /)
  set(CPACK_IGNORE_FILES "^${CPACK_PELT_TOP}/build" "/\\.git$" "/\\.git/" "/\\.cache/" "~$" "\\.swp$")
  set(CPACK_PACKAGING_INSTALL_PREFIX "")
  set(CPACK_INCLUDE_TOPLEVEL_DIRECTORY ON)
  set(CPACK_STRIP_FILES OFF)
endif()
