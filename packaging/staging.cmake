# SPDX-License-Identifier: MIT
# cpack runs this between installing to a folder of its own and packing that. A package of Debian gets
# what it has more than what is installed by hand (Debian Policy 12.1, 12.3, 12.5, 12.7).
function(pelt_run)
  execute_process(COMMAND ${ARGN} COMMAND_ERROR_IS_FATAL ANY)
endfunction()

# All times are one, and the file mask of whoever makes the package is not seen in it.
macro(pelt_settle)
  pelt_run(chmod -R u=rwX,go=rX ${CPACK_TEMPORARY_INSTALL_DIRECTORY})
  pelt_run(find ${CPACK_TEMPORARY_INSTALL_DIRECTORY} -exec
    touch --no-dereference --date=@$ENV{SOURCE_DATE_EPOCH} {} +)
endmacro()

if(NOT CPACK_GENERATOR STREQUAL "DEB")
  pelt_settle()
  return()
endif()

set(share ${CPACK_TEMPORARY_INSTALL_DIRECTORY}/usr/share)
if(NOT EXISTS ${share}/pelt)
  message(FATAL_ERROR "nothing is installed in ${share}")
endif()

# Its text is in the file called copyright, where Debian has it.
file(REMOVE ${share}/doc/pelt/LICENSE)
file(COPY ${CPACK_PELT_PACKAGING}/copyright DESTINATION ${share}/doc/pelt)

execute_process(
  COMMAND awk -v version=${CPACK_PACKAGE_VERSION} -v packager=${CPACK_PACKAGE_CONTACT}
    -v epoch=$ENV{SOURCE_DATE_EPOCH} -f ${CPACK_PELT_TOP}/packaging/changelog.awk
    ${CPACK_PELT_TOP}/CHANGELOG.md
  OUTPUT_FILE ${share}/doc/pelt/changelog COMMAND_ERROR_IS_FATAL ANY)

# -n: without the name and time of the file.
file(GLOB pages ${share}/man/man*/*[0-9])
pelt_run(gzip -9n ${pages} ${share}/doc/pelt/changelog)

pelt_settle()
