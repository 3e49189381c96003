# What `cmake --install` puts under the prefix: program, icon, menu entry, metainfo.
install(TARGETS feltmark RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(TARGETS pdf_writer LIBRARY DESTINATION lib/feltmark)
install(FILES feltmark.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES org.feltmark.Feltmark.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES org.feltmark.Feltmark.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${PROJECT_SOURCE_DIR}/README.md DESTINATION ${CMAKE_INSTALL_DOCDIR})
